import { lazy } from "react";
import type { CraftScreens } from "../screens.ts";
import { FeedingMark } from "./mark.tsx";

export const feeding: CraftScreens = {
  mark: FeedingMark,
  pages: [
    {
      path: "/craft/feeding",
      screen: lazy(async () => ({ default: (await import("./feed-screen.tsx")).FeedScreen })),
    },
    {
      path: "/craft/feeding/label",
      screen: lazy(async () => ({ default: (await import("./label-screen.tsx")).LabelScreen })),
    },
  ],
};
