import type { CraftScreens } from "../screens.ts";
import { GrowthMark } from "./mark.tsx";

/** Growth has no page of its own: it fills the plant page and the round. */
export const growth: CraftScreens = { mark: GrowthMark };
