import { onDemand } from "../../words/on-demand.ts";
import type { CraftScreens } from "../screens.ts";
import { FruitingMark } from "./mark.tsx";

const screen = onDemand(async () => (await import("./fruit-screen.tsx")).FruitScreen);

export const fruiting: CraftScreens = {
  mark: FruitingMark,
  pages: [
    { path: "/craft/fruit", screen },
    { path: "/craft/fruit/:plant", screen },
  ],
};
