import type { BenchLight, LightPage, WindowDrawn } from "@sillwood/bench/crafts/lighting";
import { useState } from "react";
import { useLocation } from "wouter";
import type { FormData } from "../../pages/fields/entry-form.tsx";
import { Compass } from "../../pages/first-run/compass.tsx";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Cares } from "./cares.tsx";
import { DrawForm } from "./draw-form.tsx";
import { SideView } from "./side-view.tsx";
import { Unsure } from "./unsure.tsx";
import { useLightWords } from "./use-light.ts";

interface DrawWindowProps {
  readonly page: LightPage;
  readonly bench: BenchLight;
  readonly window_n: number;
}

/** Until something is typed: a window like most. @source our assumption, as the engine's */
const LIKE_MOST = { width_m: 1.2, height_m: 1.4, sill_m: 0, opposite_deg: 12, recess_m: 0.1 } as const;

/** The window of a bench: which way it faces, its glass, what hides the sky. */
export function DrawWindow({ page, bench, window_n }: DrawWindowProps) {
  const words = useLightWords();
  const [, go] = useLocation();
  const stands = bench.windows.find((one) => one.window_n === window_n);
  const [data, setData] = useState<FormData>(() => dataOf(stands, window_n));
  const [isUnsure, setUnsure] = useState(false);
  const number = (key: string, else_: number) => {
    const value = data[key];
    return typeof value === "number" ? value : else_;
  };
  const drawn: WindowDrawn = {
    window_n,
    said: "",
    facesSaid: "",
    faces_deg: number("faces_deg", 180),
    width_m: number("width_m", LIKE_MOST.width_m),
    height_m: number("height_m", LIKE_MOST.height_m),
    sill_m: number("sill_m", LIKE_MOST.sill_m),
    opposite_deg: number("opposite_deg", LIKE_MOST.opposite_deg),
    recess_m: number("recess_m", LIKE_MOST.recess_m),
    glazing: (data["glazing"] as WindowDrawn["glazing"] | undefined) ?? "double",
    veil: (data["veil"] as WindowDrawn["veil"] | undefined) ?? "none",
    origin: data["width_m"] === undefined ? "assumed" : "measured",
  };
  const first = bench.spots[0];
  const facing = typeof data["faces_deg"] === "number" ? data["faces_deg"] : undefined;
  return (
    <DrawForm
      where={words.windowTitle(bench.name)}
      bench={bench.bench}
      kind="bench.window"
      on={bench.bench}
      data={data}
      onChange={setData}
      without={["faces_deg", "window_n"]}
      keep={words.keepWindow}
    >
      <SideView
        bench={{ windows: [drawn], lamps: bench.lamps, windowSaid: words.windowTitle(bench.name) }}
        spot={first}
      />
      <Cares cautions={page.cautions} of={["sun"]} />
      <Compass
        legend={words.faces}
        value={facing === undefined ? undefined : (Math.round(facing / 45) * 45) % 360}
        onlyDirections
        onChoose={(place) => {
          setUnsure(false);
          if (typeof place === "number") setData({ ...data, faces_deg: place });
        }}
      />
      {bench.unsure && (
        <KeyRow>
          <Key pressed={isUnsure} onPress={() => setUnsure(!isUnsure)}>
            {words.notSure}
          </Key>
        </KeyRow>
      )}
      {isUnsure && bench.unsure && (
        <Unsure
          unsure={bench.unsure}
          onRead={
            first &&
            (() =>
              go(`/craft/light/${encodeURIComponent(bench.bench)}/read/${encodeURIComponent(first.spot)}`))
          }
        />
      )}
    </DrawForm>
  );
}

/** What was measured stands in the fields; what was only assumed stays empty, so that nobody keeps our guess as theirs. */
function dataOf(stands: WindowDrawn | undefined, window_n: number): FormData {
  if (!stands) return { window_n };
  const { faces_deg } = stands;
  if (stands.origin === "assumed") return { window_n, faces_deg };
  const { width_m, height_m, sill_m, glazing, veil, opposite_deg, recess_m } = stands;
  return { window_n, faces_deg, width_m, height_m, sill_m, glazing, veil, opposite_deg, recess_m };
}
