import type { CraftScreens } from "../screens.ts";
import { FruitingMark } from "./mark.tsx";

export const fruiting: CraftScreens = { mark: FruitingMark };
