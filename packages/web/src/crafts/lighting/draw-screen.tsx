import type { BenchLight, LightPage } from "@sillwood/bench/crafts/lighting";
import { useParams } from "wouter";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useWords } from "../../words/words.ts";
import { DrawLamp } from "./draw-lamp.tsx";
import { DrawStands } from "./draw-stands.tsx";
import { DrawTimer } from "./draw-timer.tsx";
import { DrawWindow } from "./draw-window.tsx";
import { useLight, useLightWords } from "./use-light.ts";

/** Window, lamp, timer or place of a spot said anew: filled with what stands, and drawn as it is typed. */
export function DrawScreen() {
  const { bench: id = "", what = "", which } = useParams<{ bench: string; what: string; which?: string }>();
  const words = useLightWords();
  const { shell } = useWords();
  const { page, refused, error } = useLight({ bench: id });
  const bench = page?.benches.find((one) => one.bench === id);
  if (!page || !bench)
    return (
      <Frame where={words.title}>
        {refused !== undefined && <p role="alert">{words.refused(refused)}</p>}
        {page && <p className="serif">{words.noSuchBench}</p>}
        {!page && refused === undefined && <ReadingNote error={error} />}
      </Frame>
    );
  return (
    formOf(what, page, bench, which) ?? (
      <Frame where={words.title}>
        <p className="serif">{shell.nothingHere}</p>
      </Frame>
    )
  );
}

function formOf(what: string, page: LightPage, bench: BenchLight, which: string | undefined) {
  const number = Number(which ?? "1");
  const key = `${what} ${which}`;
  switch (what) {
    case "window":
      return <DrawWindow key={key} page={page} bench={bench} window_n={number} />;
    case "lamp":
      return <DrawLamp key={key} page={page} bench={bench} lamp_n={number} />;
    case "timer":
      return <DrawTimer key={key} page={page} bench={bench} />;
    case "stands": {
      const spot = bench.spots.find((one) => one.spot === which) ?? bench.spots[0];
      return spot && <DrawStands key={key} bench={bench} spot={spot} />;
    }
    default:
      return undefined;
  }
}
