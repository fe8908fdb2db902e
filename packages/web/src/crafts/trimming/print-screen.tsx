import { useLocation, useParams } from "wouter";
import { Key, KeyRow } from "../../parts/key.tsx";
import sheet from "../../print/sheet.module.css";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { CutLines } from "./cut-lines.tsx";
import { PlantView } from "./plant-view.tsx";
import styles from "./trim.module.css";
import { useTrim, useTrimWords } from "./use-trim.ts";

const TRIES_n = 1200;

/** The plant with slanted bars and letters on a leaf of A5, to stand at the bench. */
export function PrintScreen() {
  const { plant = "", key = "middle" } = useParams<{ plant: string; key: string }>();
  const words = useTrimWords();
  const say = useSay();
  const [, go] = useLocation();
  const first = useTrim({ plant });
  const kept = key === "kept" ? first.page?.plant?.keptPlan : undefined;
  const { page, error } = useTrim(
    kept ? { plant, own: kept.map(({ gone }) => gone) } : { plant, tries_n: TRIES_n },
  );
  const trim = page?.plant;
  const plan = trim?.plans?.plans.find((each) => each.key === (kept ? "own" : key)) ?? trim?.plans?.plans[0];
  if (!page || !trim?.views || !plan)
    return (
      <Frame where={words.print}>
        <ReadingNote error={error} />
      </Frame>
    );
  const views = trim.views;
  return (
    <Frame
      where={words.print}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go(`/craft/trim/${plant}`)}>{words.back}</Key>
          </KeyRow>
          <Key main onPress={() => window.print()}>
            {words.printIt}
          </Key>
        </>
      }
    >
      <article className={`${sheet["sheet"]} ${styles["paper"]}`}>
        <h2>
          {words.titleOf(trim.number)}, {trim.kind}: {plan.name}
        </h2>
        <p>{page.cautions[0]}</p>
        {(["front", "side"] as const).map((which) => (
          <PlantView key={which} view={views[which]} which={which} plan={plan} />
        ))}
        {plan.cuts.map((cut) => (
          <CutLines key={cut.gone} cut={cut} />
        ))}
        <p>{words.asOf(`${say.day(page.now_ms)} ${say.time(page.now_ms)}`)}</p>
      </article>
    </Frame>
  );
}
