import type { PlantId } from "@sillwood/bench/book";
import type { Say, UnitSystem } from "@sillwood/bench/words";
import type { ScienceFunction } from "@sillwood/science/catalogue";
import { useEffect, useState } from "react";
import { useLocation, useParams } from "wouter";
import { changeSettings } from "../../device/settings.ts";
import { useAsk } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Slip } from "../../parts/slip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { Frame } from "../../shell/frame.tsx";
import { sayLast } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay, useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { SelectField } from "../fields/select-field.tsx";
import { shownUnit } from "../fields/shown-unit.ts";
import { useBroken } from "../fields/use-broken.ts";
import { fitsOf, pathOf } from "./fits.ts";
import { InputField } from "./input-field.tsx";
import { type AllGiven, type Reckoned, reckon } from "./reckon.ts";
import styles from "./reckoner.module.css";
import { partsSaid, ResultOf } from "./result-of.tsx";
import { sumName } from "./sum-name.ts";
import { setTape, useTape } from "./tape.ts";
import { Tape } from "./tape-list.tsx";
import { useCatalogue } from "./use-catalogue.ts";

/** One formula as a working sheet. */
export function SumScreen() {
  const { sum: name } = useParams();
  const { reckoner: words } = useWords();
  const { sums, error } = useCatalogue();
  const sum = sums?.find((one) => one.name === name);
  if (!sum)
    return (
      <Frame where={words.title}>
        {sums ? (
          <p className="serif">{words.noneFound(name ?? "")}</p>
        ) : error ? (
          <p role="alert">{words.notFetched}</p>
        ) : (
          <ReadingNote />
        )}
      </Frame>
    );
  return <Sheet key={sum.name} sum={sum} />;
}

function Sheet({ sum }: { readonly sum: ScienceFunction }) {
  const { reckoner: words, fields } = useWords();
  const { units } = useSettings();
  const say = useSay();
  const [, go] = useLocation();
  const tape = useTape();
  const [given, setGiven] = useState<AllGiven>({});
  const { broken, onBroken } = useBroken();
  const [plant, setPlant] = useState<PlantId>();
  const { value: things } = useAsk("things", {});
  const { value: kinds } = useAsk("kinds", {});
  const slip = useSlip();
  const { value: takings } = useAsk("takings", { plant: plant ?? ("" as PlantId) });
  // What the plant has under the very name of an input goes in at once; the rest can be taken by hand.
  useEffect(() => {
    if (!plant || !takings) return;
    const taken = Object.fromEntries(
      sum.inputs.flatMap(({ name, kind, min, max }) => {
        const one = takings.find((taking) => taking.name === name);
        return kind === "number" && one && one.value >= min && one.value <= max ? [[name, one]] : [];
      }),
    );
    setGiven((before) => ({ ...before, ...taken }));
  }, [plant, takings, sum]);

  // A refused value must not be covered up by the usual one.
  const out: Reckoned = broken.size > 0 ? { problem: words.putRight } : reckon(sum, given);
  const title = sumName(sum.name, say.language);
  const lines = "fields" in out ? partsSaid(out.fields, units, say, words) : [];
  const said = lines.map(({ said: one }) => one).join("; ");
  const keep = () => {
    if (!("fields" in out)) return;
    const first = out.fields[0];
    setTape([
      ...tape,
      {
        title,
        said,
        unit: first?.unit ?? "",
        origin: out.origin,
        ...(typeof first?.value === "number" ? { value: first.value } : {}),
      },
    ]);
    sayLast({ text: words.onTape(said), undo: () => setTape(tape) });
  };
  const copy = async () => {
    // Refused, or no clipboard on a page without TLS: then it is not said to be copied.
    const isCopied = await navigator.clipboard?.writeText(said).then(
      () => true,
      () => false,
    );
    sayLast(isCopied ? { text: words.copied(said) } : { text: words.notCopied(said), trouble: true });
  };
  const fits = "fields" in out ? fitsOf(out.fields, kinds ?? []) : [];
  // What no entry counts is carried by hand.
  const carry = () => (fits.length > 0 ? slip.open() : void copy());
  const offers = [
    ...(takings ?? []),
    ...tape.flatMap(({ title: what, value, unit, origin }, i) =>
      value === undefined
        ? []
        : [{ name: `tape ${i}`, what: words.fromTape(what), unit, value, origin, from: words.tape }],
    ),
  ];
  return (
    <Frame
      where={title}
      page={sum.name}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => changeSettings({ units: units === "us" ? "metric" : "us" })}>
              {words.units(units === "us" ? words.us : words.metric)}
            </Key>
            <Key shut={lines.length === 0} onPress={() => void copy()}>
              {words.copy}
            </Key>
            <Key shut={lines.length === 0} onPress={carry}>
              {words.use}
            </Key>
            <Key onPress={() => go("/reckon")}>{words.another}</Key>
          </KeyRow>
          <Key main shut={lines.length === 0} onPress={keep}>
            {words.keep}
          </Key>
        </>
      }
    >
      <div className={styles["both"]}>
        <div className={styles["sheet"]}>
          <p className="serif measure">{sum.what}</p>
          {sum.inputs.length > 0 && (things?.plants.length ?? 0) > 0 && (
            <SelectField
              label={words.takeFrom}
              none={words.typed}
              options={
                things?.plants.map(({ id, name, beside }) => ({ value: id, said: `${name} ${beside}` })) ?? []
              }
              value={plant ?? ""}
              onChoose={(id) => setPlant(id === "" ? undefined : (id as PlantId))}
            />
          )}
          {sum.inputs.map((input) => (
            <InputField
              key={input.name}
              input={input}
              given={given[input.name]}
              offers={offers}
              onGive={(one) => setGiven((before) => ({ ...before, [input.name]: one }))}
              onBroken={(isBroken) => onBroken(input.name, isBroken)}
              trouble={"problem" in out && out.field === input.name ? out.problem : undefined}
            />
          ))}
          <ResultOf sum={sum} out={out} lines={lines} />
        </div>
        <Tape />
      </div>
      <Slip slip={slip} title={words.whereTo}>
        <Ledger label={words.whereTo}>
          {fits.map((fit) => (
            <Row key={`${fit.kind} ${fit.field.key} ${fit.part}`} onOpen={() => go(pathOf(fit, plant))}>
              {words.goesTo(
                fields.kinds[fit.kind] ?? fit.kind,
                fields.names[fit.field.key] ?? fit.field.what,
                inUnit(fit.value, fit.field.unit, units, say),
              )}
              {lines.length > 1 && ` (${sumName(fit.part, say.language)})`}
            </Row>
          ))}
        </Ledger>
        <KeyRow>
          <Key
            onPress={() => {
              slip.close();
              void copy();
            }}
          >
            {words.copy}
          </Key>
        </KeyRow>
      </Slip>
    </Frame>
  );
}

function inUnit(value: number, unit: string, units: UnitSystem, say: Say): string {
  const shown = shownUnit(unit, units);
  return `${say.number(shown.shown(value), shown.digits_n)}\u202f${shown.symbol}`;
}
