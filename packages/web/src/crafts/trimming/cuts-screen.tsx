import type { Json } from "@sillwood/bench/book";
import { useLocation, useParams } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import pages from "../../pages/pages.module.css";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Care } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { CutLines } from "./cut-lines.tsx";
import { PlantView } from "./plant-view.tsx";
import { useTrim, useTrimWords } from "./use-trim.ts";

/** The kept plan at the bench: each cut is written when it was made, one by one. */
export function CutsScreen() {
  const { plant = "" } = useParams<{ plant: string }>();
  const words = useTrimWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const first = useTrim({ plant });
  const kept = first.page?.plant?.keptPlan;
  const { page, error } = useTrim({ plant, ...(kept ? { own: kept.map(({ gone }) => gone) } : {}) });
  const trim = page?.plant;
  if (!page || !trim)
    return (
      <Frame where={words.title}>
        <ReadingNote error={error} />
      </Frame>
    );
  const plan = trim.plans?.plans.find(({ key }) => key === "own");
  const next = kept?.[0];
  const shown = plan && {
    ...plan,
    cuts: plan.cuts.map((cut) => ({
      ...cut,
      letter: kept?.find(({ gone }) => gone === cut.gone)?.letter ?? cut.letter ?? "",
    })),
  };
  return (
    <Frame
      where={words.titleOf(trim.number)}
      beside={words.kept}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go(`/craft/trim/${plant}`)}>{words.plans}</Key>
            <Key onPress={() => go(`/craft/trim/${plant}/print/kept`)}>{words.print}</Key>
          </KeyRow>
          {next && (
            <Key
              main
              onPress={() =>
                void write(engine, [{ kind: "trimming.cut", on: [plant], data: next as unknown as Json }])
              }
            >
              {words.made(next.letter)}
            </Key>
          )}
        </>
      }
    >
      {page.cautions[0] !== undefined && <Care word="">{page.cautions[0]}</Care>}
      {trim.held.map((said) => (
        <p key={said}>{said}</p>
      ))}
      {shown && trim.views ? (
        <>
          <PlantView view={trim.views.front} which="front" plan={shown} />
          {shown.cuts.map((cut) => (
            <CutLines key={cut.gone} cut={cut} />
          ))}
        </>
      ) : (
        <p className={pages["lead"]}>{trim.levelSaid}</p>
      )}
    </Frame>
  );
}
