import type { Working } from "../../working/working.ts";
import type { Judged } from "./judged-plant.ts";
import type { CutFigures } from "./page-shape.ts";
import { trimmingWords } from "./words.ts";
import { trimPageWords } from "./words-page.ts";

/** How the numbers of a cut came about. */
export function cutPageWorking(judged: Judged, name: string, figures: CutFigures): Working {
  const { say, assumed } = judged.sight;
  const words = trimPageWords(say);
  const shared = trimmingWords(say).working;
  const first = judged.bench.settings.firstBreak_frac ?? assumed("firstBreak_frac");
  return {
    title: words.cut.title(name),
    result: words.cut.takes(figures, judged.warn_frac),
    value: figures.lit_frac,
    unit: "",
    origin: "assumed",
    formula: words.working.formula,
    sum: words.working.sum(figures),
    inputs: [
      {
        name: shared.area,
        said: say.percent(figures.area_frac),
        value: figures.area_frac,
        unit: "",
        origin: "measured",
        from: words.working.fromTrace,
      },
      {
        name: words.working.warmth,
        said: say.temperature(judged.around.air_C),
        value: judged.around.air_C,
        unit: "°C",
        origin: "learned",
        from: words.working.ahead,
      },
      {
        name: words.working.break,
        said: say.percent(first),
        value: first,
        unit: "",
        origin: "assumed",
        from: shared.ours,
        assumption: "firstBreak_frac",
      },
    ],
    source: "MonsiSaeki1953; our assumption",
    movesMost: words.working.movesMost,
    notes: [shared.trimNote],
  };
}
