import type { CraftScreens } from "../screens.ts";
import { ScoutingMark } from "./mark.tsx";

export const scouting: CraftScreens = { mark: ScoutingMark };
