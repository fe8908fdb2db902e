import type { PlantId } from "@sillwood/bench/book";
import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { craftScreens, screensOf } from "../../crafts/index.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Care, Ledger, Row } from "../../parts/ledger.tsx";
import { OriginMark } from "../../parts/origin.tsx";
import { Frame } from "../../shell/frame.tsx";
import { HowGood } from "../../shell/how-good.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import type { BenchSeen, SpotSeen } from "../answers/seen.ts";
import styles from "../pages.module.css";
import { Shelf } from "./shelf.tsx";

/** One bench: its spots in walking order, the air and light they are reckoned with and where those come from. */
export function BenchScreen() {
  const id = useParams()["bench"] ?? "";
  const { benches: words } = useWords();
  const { value: seen, error } = useAsk("benches", {});
  const engine = useEngine();
  const [, go] = useLocation();
  const [moving, setMoving] = useState<{ readonly plant: PlantId; readonly number: string }>();
  const bench = seen?.benches.find((one) => one.id === id);
  if (!bench)
    return (
      <Frame where={words.title}>
        {seen ? <p className="serif">{words.noSuchBench}</p> : <ReadingNote error={error} />}
      </Frame>
    );

  const press = (spot: SpotSeen) => {
    if (!moving) {
      const [first] = spot.plants;
      if (first) setMoving(first);
      return;
    }
    setMoving(undefined);
    if (spot.plants.some(({ plant }) => plant === moving.plant)) return;
    const from = bench.spots.find(({ plants }) => plants.some(({ plant }) => plant === moving.plant));
    // Onto a taken spot the two change seats; Undo takes both back.
    void write(engine, [
      { kind: "plant.moved", on: [moving.plant], data: { to: spot.id } },
      ...(from
        ? spot.plants.map(({ plant }) => ({ kind: "plant.moved", on: [plant], data: { to: from.id } }))
        : []),
    ]);
  };
  return (
    <Frame
      where={bench.name}
      beside={words.places[bench.place]}
      page={bench.id}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go(`/write/bench.air/${bench.id}`)}>{words.setAir}</Key>
            <Key onPress={() => go(`/weigh/${encodeURIComponent(bench.id)}`)}>{words.weigh}</Key>
            <Key onPress={() => go("/print/labels")}>{words.labels}</Key>
            {moving ? (
              <Key onPress={() => go(`/write/plant.moved/${moving.plant}`)}>{words.otherBench}</Key>
            ) : (
              <Key onPress={() => go(`/bench/${bench.id}/change`)}>{words.changeBench}</Key>
            )}
          </KeyRow>
          <Key main onPress={() => go(`/write/bench.lit/${bench.id}`)}>
            {words.takeReading}
          </Key>
        </>
      }
    >
      <p className={styles["lead"]}>{moving ? words.moveWhere(moving.number) : words.moveHow}</p>
      <Shelf spots={bench.spots} moving={moving?.plant} onPress={press} />
      <Origins bench={bench} />
      <OfCrafts bench={bench.id} />
      <HowGood whose={{ bench: bench.id }} />
      {bench.place === "shelf" && <Care word={words.care}>{words.lampCare}</Care>}
    </Frame>
  );
}

/** What crafts have more to say of this bench. */
function OfCrafts({ bench }: { readonly bench: string }) {
  const { desk: words } = useWords();
  const [, go] = useLocation();
  return (
    <Ledger label={words.crafts}>
      {Object.keys(craftScreens).flatMap((craft) => {
        const path = screensOf(craft)?.ofBench?.(bench);
        return path ? (
          <Row key={craft} onOpen={() => go(path)}>
            {words.craftNames[craft] ?? craft}
          </Row>
        ) : (
          []
        );
      })}
    </Ledger>
  );
}

/** What the bench is reckoned with, each with where it comes from. */
function Origins({ bench }: { readonly bench: BenchSeen }) {
  const { benches: words } = useWords();
  const say = useSay();
  const light = bench.spots[0];
  const rows = [
    {
      name: words.air,
      said: words.airToday(say.temperature(bench.dayAir_C), say.temperature(bench.nightAir_C)),
      source: bench.air,
    },
    { name: words.humidity, said: say.percent(bench.humidity_frac), source: bench.air },
    ...(light
      ? [{ name: words.light, said: words.dli(say.number(light.dli_mol_m2_d, 1)), source: light.light }]
      : []),
  ];
  return (
    <Ledger label={words.reckonedWith}>
      {rows.map(({ name, said, source }) => (
        <Row key={name}>
          <span className={styles["line"]}>
            <span>{name}</span>
            <span>
              {said} <OriginMark origin={source.origin} />
            </span>
          </span>
          <span className={styles["beside"]}>{source.from}</span>
        </Row>
      ))}
      {bench.windowFaces_deg !== undefined && (
        <Row>
          <span className={styles["line"]}>
            <span>{words.window}</span>
            <span>{words.faces(bench.windowFaces_deg)}</span>
          </span>
        </Row>
      )}
    </Ledger>
  );
}
