import type { CraftScreens } from "../screens.ts";
import { TrimmingMark } from "./mark.tsx";

export const trimming: CraftScreens = { mark: TrimmingMark };
