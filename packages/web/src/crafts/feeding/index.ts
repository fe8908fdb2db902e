import { onDemand } from "../../words/on-demand.ts";
import type { CraftScreens } from "../screens.ts";
import { FeedingMark } from "./mark.tsx";

export const feeding: CraftScreens = {
  mark: FeedingMark,
  pages: [
    {
      path: "/craft/feeding",
      screen: onDemand(async () => (await import("./feed-screen.tsx")).FeedScreen),
    },
    {
      path: "/craft/feeding/label",
      screen: onDemand(async () => (await import("./label-screen.tsx")).LabelScreen),
    },
  ],
};
