import type { PlantId } from "@sillwood/bench/book";
import type { MixPage } from "@sillwood/bench/crafts/potting";
import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import pages from "../../pages/pages.module.css";
import { Key } from "../../parts/key.tsx";
import { Care } from "../../parts/ledger.tsx";
import { OriginMark } from "../../parts/origin.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { MixingTabs } from "../mixing-tabs.tsx";
import { CutOpen } from "./cut-open.tsx";
import { Measure } from "./measure.tsx";
import styles from "./potting.module.css";
import { usePotting, usePottingWords } from "./use-potting.ts";

type Pot = MixPage["pot"];
type Part = MixPage["parts"][number]["part"];

/** Screen 5, medium: from the bags on the shelf to whole scoops for this pot, with the pot cut open. */
export function MixScreen() {
  const { plant } = useParams<{ plant?: string }>();
  const words = usePottingWords();
  const [bags, setBags] = useState<readonly Part[]>([]);
  const [pot, setPot] = useState<Pot>();
  const { page, refused, error } = usePotting({
    what: "mix",
    bags,
    ...(pot ? { pot } : {}),
    ...(plant === undefined ? {} : { plant: plant as PlantId }),
  });
  if (!page)
    return (
      <Frame where={words.mixTitle}>
        {refused === undefined ? <ReadingNote error={error} /> : <p role="alert">{words.refused(refused)}</p>}
      </Frame>
    );
  return (
    <Desk page={page} plant={plant as PlantId | undefined} bags={bags} onBags={setBags} onPot={setPot} />
  );
}

interface DeskProps {
  readonly page: MixPage;
  readonly plant: PlantId | undefined;
  readonly bags: readonly Part[];
  readonly onBags: (bags: readonly Part[]) => void;
  readonly onPot: (pot: Pot) => void;
}

function Desk({ page, plant, bags, onBags, onPot }: DeskProps) {
  const words = usePottingWords();
  const say = useSay();
  const engine = useEngine();
  const [, go] = useLocation();
  const { mix, pot, noMix } = page;
  const cm = (value: number) => say.length(value);
  const [across, wide] = pot.form === "round" ? [pot.top_cm, pot.top_cm] : [pot.length_cm, pot.width_cm];
  const shaped = (form: Pot["form"], length: number, width: number, depth: number): Pot =>
    form === "round"
      ? { form, top_cm: length, depth_cm: depth }
      : { form, length_cm: length, width_cm: width, depth_cm: depth };
  const toggle = (part: Part) =>
    onBags(bags.includes(part) ? bags.filter((each) => each !== part) : [...bags, part]);
  const fill = async () => {
    if (!mix || plant === undefined) return;
    const drafts = [
      { kind: "plant.potted", on: [plant], data: { pot, medium: wordFor(mix) } as never },
      { kind: "potting.filled", on: [plant], data: { recipe: mix.recipe } as never },
    ];
    const written = await write(engine, drafts);
    if ("kept" in written) go(`/plant/${plant}`);
  };
  return (
    <Frame
      where={page.number === undefined ? words.mixTitle : words.mixFor(page.number)}
      keys={
        plant === undefined ? (
          <Key main shut={!mix || noMix !== undefined} onPress={() => window.print()}>
            {!mix ? words.chooseFirst : noMix === undefined ? words.print : words.noMixKey}
          </Key>
        ) : (
          <Key main shut={!mix} onPress={() => void fill()}>
            {mix ? words.fillWith(page.number ?? "") : words.chooseFirst}
          </Key>
        )
      }
    >
      <MixingTabs at="medium" />
      <p className={`serif ${pages["lead"]}`} aria-live="polite">
        {page.said}
      </p>
      <div className={pages["form"]}>
        <fieldset className={styles["bags"]}>
          <legend>{words.bags}</legend>
          {page.parts.map(({ part, name }) => (
            <Key key={part} pressed={bags.includes(part)} onPress={() => toggle(part)}>
              {name}
            </Key>
          ))}
        </fieldset>
      </div>
      {mix && (
        <CutOpen
          cut={mix.cut}
          depth_cm={pot.depth_cm}
          said={words.cutSaid(
            cm(Math.round(10 * mix.cut.wetLayer_cm) / 10),
            cm(Math.round(10 * mix.cut.fill_cm) / 10),
          )}
          words={words}
        />
      )}
      <div className={pages["form"]}>
        <Measure
          label={words.depth}
          said={cm(pot.depth_cm)}
          value={pot.depth_cm}
          min={3}
          max={40}
          less={words.less(words.depth)}
          more={words.more(words.depth)}
          onChange={(depth) => onPot(shaped(pot.form, across, wide, depth))}
        />
      </div>
      {mix && (
        <>
          {noMix === undefined && (
            <>
              <h2>{words.recipe}</h2>
              <ol className={styles["recipe"]}>
                {mix.recipe.map(({ part, scoops_n }, i) => (
                  <li key={part}>
                    {words.step(say.number(i + 1), words.scoops(say.number(scoops_n), nameOf(page, part)))}{" "}
                    <OriginMark origin={originOf(page, part)} />
                  </li>
                ))}
                <li>{words.step(say.number(mix.recipe.length + 1), words.mixWell)}</li>
              </ol>
              <Care word={words.care}>{page.care}</Care>
            </>
          )}
          <ul>
            {mix.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
      <div className={pages["form"]}>
        <Choices
          legend={words.form}
          options={(["round", "oval", "rectangular"] as const).map((value) => ({
            value,
            said: words[value],
          }))}
          value={pot.form}
          onChoose={(form) => onPot(shaped(form, across, wide, pot.depth_cm))}
        />
        <Measure
          label={words.across}
          said={cm(across)}
          value={across}
          min={5}
          max={60}
          less={words.less(words.across)}
          more={words.more(words.across)}
          onChange={(length) => onPot(shaped(pot.form, length, wide, pot.depth_cm))}
        />
        {pot.form !== "round" && (
          <Measure
            label={words.wide}
            said={cm(wide)}
            value={wide}
            min={5}
            max={60}
            less={words.less(words.wide)}
            more={words.more(words.wide)}
            onChange={(width) => onPot(shaped(pot.form, across, width, pot.depth_cm))}
          />
        )}
      </div>
      <p className={pages["note"]}>{page.potSaid}</p>
      {page.others.length > 0 && noMix === undefined && (
        <section className={pages["part"]}>
          <h2>{words.others}</h2>
          <ul>
            {page.others.map((other) => (
              <li key={other.said}>
                {other.said}, {words.chance(say.number(Math.min(9, Math.round(10 * other.chance_frac))))}
              </li>
            ))}
          </ul>
        </section>
      )}
      {mix && (
        <section className={pages["part"]}>
          <h2>{words.test}</h2>
          <ol>
            {page.test.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
        </section>
      )}
    </Frame>
  );
}

const nameOf = (page: MixPage, part: Part): string =>
  page.parts.find((each) => each.part === part)?.name ?? part;

const originOf = (page: MixPage, part: Part) =>
  page.parts.find((each) => each.part === part)?.origin ?? "assumed";

/** The word by which the house knows such a mix: the recipe beside it says more. */
function wordFor(mix: NonNullable<MixPage["mix"]>): "spongy" | "bark" | "gritty" {
  const scoops = (of: RegExp) =>
    mix.recipe.reduce((sum, { part, scoops_n }) => sum + (of.test(part) ? scoops_n : 0), 0);
  const all = scoops(/./);
  if (scoops(/^(perlite|pumice|clay|sand)/) * 2 > all) return "gritty";
  return scoops(/bark/) * 2 > all ? "bark" : "spongy";
}
