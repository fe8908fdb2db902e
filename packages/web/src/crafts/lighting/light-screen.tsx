import type { PlantId } from "@sillwood/bench/book";
import type { BenchLight, LightAsk, LightPage, SpotLit } from "@sillwood/bench/crafts/lighting";
import type { Working } from "@sillwood/bench/working";
import { useEffect, useRef, useState } from "react";
import { useLocation, useParams } from "wouter";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import pages from "../../pages/pages.module.css";
import { Key, KeyRow } from "../../parts/key.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { WorkingSlip } from "../../parts/working-slip.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { BenchBrief } from "./bench-brief.tsx";
import { BenchDetail } from "./bench-detail.tsx";
import { BetterSeats } from "./better-seats.tsx";
import styles from "./light.module.css";
import { MonthChooser } from "./month-chooser.tsx";
import { movesTo } from "./moves-to.ts";
import { nextSpot } from "./next-spot.ts";
import { Plan } from "./plan.tsx";
import { useLight, useLightWords } from "./use-light.ts";

/** Screen 3: benches from above with their light as height lines; when it stops being enough, and what to do. */
export function LightScreen() {
  const { bench: id } = useParams<{ bench?: string }>();
  const words = useLightWords();
  const [, go] = useLocation();
  const [month, setMonth] = useState<number>();
  const { value: house } = useAsk("benches", {});
  const ask: LightAsk = {
    ...(id === undefined ? {} : { bench: id }),
    ...(month === undefined ? {} : { month }),
  };
  const { page, refused, error, isMissing } = useLight(ask);
  const known = useLast(page);
  const isEmpty = house?.benches.length === 0;
  if (isEmpty)
    return (
      <Frame
        where={words.title}
        keys={
          <Key main onPress={() => go("/bench/new")}>
            {words.drawOne}
          </Key>
        }
      >
        <p className="serif">{words.empty}</p>
      </Frame>
    );
  if (!known)
    return (
      <Frame where={words.title}>
        {isMissing && <p className="serif">{words.noPage}</p>}
        {refused !== undefined && <p role="alert">{words.refused(refused)}</p>}
        {!isMissing && refused === undefined && <ReadingNote error={error} />}
      </Frame>
    );
  return (
    <Light
      // Another bench is another page; another month of it is the same.
      key={id ?? "all"}
      page={known}
      id={id}
      month={month ?? known.month}
      onMonth={setMonth}
    />
  );
}

/** The last answer stays while the next month is reckoned. */
function useLast(page: LightPage | undefined): LightPage | undefined {
  const last = useRef(page);
  if (page) last.current = page;
  return page ?? last.current;
}

interface LightProps {
  readonly page: LightPage;
  readonly id: string | undefined;
  readonly month: number;
  readonly onMonth: (month: number) => void;
}

function Light({ page, id, month, onMonth }: LightProps) {
  const words = useLightWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const slip = useSlip();
  const [working, setWorking] = useState<Working>();
  const benches = id === undefined ? page.benches : page.benches.filter(({ bench }) => bench === id);
  const [chosenId, setChosen] = useState(() => firstChosen(benches));
  const [moving, setMoving] = useState<{ readonly plant?: PlantId; readonly number?: string }>();
  const spots = benches.flatMap((bench) => bench.spots);
  const chosen = spots.find(({ spot }) => spot === chosenId);
  const one = id === undefined ? undefined : benches[0];
  const byArrow = useRef(false);
  useEffect(() => {
    if (byArrow.current) document.querySelector<HTMLElement>(`[data-spot="${chosenId}"]`)?.focus();
    byArrow.current = false;
  }, [chosenId]);

  const open = (next: Working) => {
    setWorking(next);
    slip.open();
  };
  const press = (spot: SpotLit) => {
    setChosen(spot.spot);
    if (!moving) return;
    if (moving.plant === undefined) {
      if (spot.plant) setMoving({ plant: spot.plant, number: spot.number ?? "" });
      return;
    }
    setMoving(undefined);
    const drafts = movesTo(spots, moving.plant, spot.spot);
    if (drafts.length > 0) void write(engine, drafts);
  };
  const walk = (direction: "left" | "right" | "up" | "down") => {
    const next = nextSpot(benches, chosenId, direction);
    if (next === undefined) return;
    byArrow.current = true;
    setChosen(next);
  };
  useKeys({
    arrowleft: () => walk("left"),
    arrowright: () => walk("right"),
    arrowup: () => walk("up"),
    arrowdown: () => walk("down"),
    m: () => chosen?.plant && setMoving({ plant: chosen.plant, number: chosen.number ?? "" }),
  });

  const worth = one ? one.worth : benches.find((bench) => bench.worth)?.worth;
  const readAt = (spot = chosen?.spot) => {
    const bench = benches.find((each) => each.spots.some((each_) => each_.spot === spot)) ?? benches[0];
    const target = spot ?? worth?.spot ?? bench?.spots[0]?.spot;
    if (bench && target)
      go(`/craft/light/${encodeURIComponent(bench.bench)}/read/${encodeURIComponent(target)}`);
  };
  const moveHow = moving && (moving.number ? words.moveWhere(moving.number) : words.moveHow);
  return (
    <Frame
      where={one?.name ?? words.title}
      beside={one ? undefined : words.allBenches}
      page={id ?? "all"}
      keys={
        <>
          <KeyRow>
            <Key pressed={moving !== undefined} onPress={() => setMoving(moving ? undefined : {})}>
              {moving ? words.stopMoving : words.movePot}
            </Key>
            {one && one.lamps.length > 0 && <SetLamp bench={one} />}
          </KeyRow>
          <Key main onPress={() => readAt()}>
            {words.takeReading}
          </Key>
        </>
      }
    >
      <div className="measure">
        <p className={`${pages["lead"]} ${styles["begins"]}`} role={moving ? "status" : undefined}>
          <strong>{moveHow ?? one?.said ?? page.said}</strong>
        </p>
      </div>
      <MonthChooser
        month={month}
        said={page.monthSaid}
        onMonth={onMonth}
        all={id === undefined ? undefined : () => go("/craft/light")}
      />
      {benches.map((bench, i) =>
        one ? (
          <BenchDetail key={bench.bench} bench={bench} page={page} chosen={chosen} onWorking={open}>
            <Plan bench={bench} chosen={chosenId} moving={moving?.plant} onPress={press} isFirst />
          </BenchDetail>
        ) : (
          <BenchBrief
            key={bench.bench}
            bench={bench}
            chosen={bench.spots.find(({ spot }) => spot === chosenId)}
            onWorking={open}
          >
            <Plan bench={bench} chosen={chosenId} moving={moving?.plant} onPress={press} isFirst={i === 0} />
          </BenchBrief>
        ),
      )}
      <BetterSeats seats={page.seats} onWorking={open} />
      <WorkingSlip slip={slip} working={working} onChange={() => go("/settings/assumed")} />
    </Frame>
  );
}

/** What is advised for the lamp is one key; where nothing is to be changed it leads to the timer itself. */
function SetLamp({ bench }: { readonly bench: BenchLight }) {
  const words = useLightWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const { advice } = bench;
  if (!advice?.change)
    return (
      <Key onPress={() => go(`/craft/light/${encodeURIComponent(bench.bench)}/draw/timer`)}>
        {words.setLamp}
      </Key>
    );
  return (
    <Key onPress={() => void write(engine, [advice.draft])}>
      {advice.on && advice.off ? words.setLampTo(words.timerSaid(advice.on, advice.off)) : words.keepOff}
    </Key>
  );
}

/** The spot whose reading is worth most, else the darkest pot, else the first. */
function firstChosen(benches: readonly BenchLight[]): string | undefined {
  const spots = benches.flatMap((bench) => bench.spots);
  const short = spots
    .filter(({ state }) => state === "short")
    .sort((a, b) => a.light.mid_mol_m2_d - b.light.mid_mol_m2_d)[0];
  return (
    benches.find(({ worth }) => worth)?.worth?.spot ??
    short?.spot ??
    spots.find(({ plant }) => plant)?.spot ??
    spots[0]?.spot
  );
}
