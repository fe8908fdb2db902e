import { lazy } from "react";
import type { CraftScreens } from "../screens.ts";
import { TrimmingMark } from "./mark.tsx";

export const trimming: CraftScreens = {
  mark: TrimmingMark,
  pages: [
    {
      path: "/craft/trim",
      screen: lazy(async () => ({ default: (await import("./list-screen.tsx")).TrimList })),
    },
    {
      path: "/craft/trim/:plant",
      screen: lazy(async () => ({ default: (await import("./trim-screen.tsx")).TrimScreen })),
    },
    {
      path: "/craft/trim/:plant/trace",
      screen: lazy(async () => ({ default: (await import("./trace-screen.tsx")).TraceScreen })),
    },
    {
      path: "/craft/trim/:plant/sketch",
      screen: lazy(async () => ({ default: (await import("./sketch-screen.tsx")).SketchScreen })),
    },
    {
      path: "/craft/trim/:plant/cuts",
      screen: lazy(async () => ({ default: (await import("./cuts-screen.tsx")).CutsScreen })),
    },
    {
      path: "/craft/trim/:plant/print/:key",
      screen: lazy(async () => ({ default: (await import("./print-screen.tsx")).PrintScreen })),
    },
  ],
};
