import type { CraftScreens } from "../screens.ts";
import { PottingMark } from "./mark.tsx";

export const potting: CraftScreens = { mark: PottingMark };
