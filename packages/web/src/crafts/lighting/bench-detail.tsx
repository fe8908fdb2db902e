import type { BenchLight, LightPage, SpotLit } from "@sillwood/bench/crafts/lighting";
import type { Working } from "@sillwood/bench/working";
import type { ReactNode } from "react";
import { useLocation } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { write } from "../../shell/last-line.ts";
import { useSay } from "../../shell/say.ts";
import { LampPart } from "./lamp-part.tsx";
import styles from "./light.module.css";
import { MonthBars } from "./month-bars.tsx";
import { SideView } from "./side-view.tsx";
import { SpotSaid } from "./spot-said.tsx";
import { Unsure } from "./unsure.tsx";
import { useLightWords } from "./use-light.ts";

interface BenchDetailProps {
  readonly bench: BenchLight;
  readonly page: LightPage;
  readonly chosen: SpotLit | undefined;
  readonly onWorking: (working: Working) => void;
  /** Its plan. */
  readonly children: ReactNode;
}

/** Everything of one bench's light: side view, plan, the pressed spot's year, lamps, what a reading would buy. */
export function BenchDetail({ bench, page, chosen, onWorking, children }: BenchDetailProps) {
  const words = useLightWords();
  const say = useSay();
  const [, go] = useLocation();
  const monthNow = Number(
    new Intl.DateTimeFormat("en", { month: "numeric", timeZone: say.zone }).format(page.now_ms),
  );
  const to = (path: string) => () => go(`/craft/light/${encodeURIComponent(bench.bench)}/${path}`);
  const { worth } = bench;
  return (
    <>
      <SideView bench={bench} spot={chosen} />
      {children}
      {bench.unsure && (
        <Unsure
          unsure={bench.unsure}
          onRead={to(`read/${encodeURIComponent(chosen?.spot ?? bench.spots[0]?.spot ?? "")}`)}
        />
      )}
      {chosen ? (
        <>
          <SpotSaid spot={chosen} onWorking={onWorking} />
          <MonthBars spot={chosen} month={page.month} now={monthNow} />
        </>
      ) : (
        <p className={styles["note"]}>{words.pressSpot}</p>
      )}
      {worth && (
        <section className={styles["part"]}>
          <h2>{words.worth}</h2>
          <Ledger>
            <Row onOpen={to(`read/${encodeURIComponent(worth.spot)}`)}>{worth.said}</Row>
          </Ledger>
        </section>
      )}
      <LampPart bench={bench} cautions={page.cautions} onWorking={onWorking} />
      <TurnPart bench={bench} />
      <section className={styles["part"]}>
        <h2>{words.whatIsHere}</h2>
        <Ledger label={words.whatIsHere}>
          {!bench.outdoors && (
            <>
              {bench.windows.map(({ window_n, said }) => (
                <Row key={`window ${window_n}`} onOpen={to(`draw/window/${window_n}`)}>
                  <span className={styles["begins"]}>
                    {bench.windows.length > 1 && `${words.window(window_n)}: `}
                    {said}
                  </span>
                </Row>
              ))}
              <Row onOpen={to(`draw/window/${nextNumber(bench.windows.map(({ window_n }) => window_n))}`)}>
                {bench.windows.length > 0 ? words.drawAnotherWindow : words.drawWindow}
              </Row>
              {bench.lamps.map(({ lamp_n, said }) => (
                <Row key={`lamp ${lamp_n}`} onOpen={to(`draw/lamp/${lamp_n}`)}>
                  <span className={styles["begins"]}>
                    {bench.lamps.length > 1 && `${words.lampNo(lamp_n)}: `}
                    {said}
                  </span>
                </Row>
              ))}
              <Row onOpen={to(`draw/lamp/${nextNumber(bench.lamps.map(({ lamp_n }) => lamp_n))}`)}>
                {bench.lamps.length > 0 ? words.drawAnotherLamp : words.drawLamp}
              </Row>
              {chosen && (
                <Row onOpen={to(`draw/stands/${encodeURIComponent(chosen.spot)}`)}>
                  {words.whereSpot(chosen.name)}
                </Row>
              )}
            </>
          )}
          <Row onOpen={to("print")}>{words.print}</Row>
          <Row onOpen={() => go(`/bench/${bench.bench}`)}>{words.openBench}</Row>
        </Ledger>
      </section>
      {bench.read.length > 0 && (
        <section className={styles["part"]}>
          <h2>{words.readings}</h2>
          <Ledger label={words.readings}>
            {bench.read.map((read) => (
              <Row key={read.entry} onOpen={() => go(`/right/${read.entry}`)}>
                {say.day(read.at_ms)}, {read.spotSaid}: {read.said}
              </Row>
            ))}
          </Ledger>
        </section>
      )}
    </>
  );
}

const nextNumber = (taken: readonly number[]) => {
  let number = 1;
  while (taken.includes(number)) number++;
  return number;
};

const QUARTER_deg = 90;

/** Pots that lean to the window, turned all at once. */
function TurnPart({ bench }: { readonly bench: BenchLight }) {
  const words = useLightWords();
  const engine = useEngine();
  const plants = bench.spots.flatMap(({ plant, turnSaid }) => (plant && turnSaid ? [plant] : []));
  if (plants.length === 0) return null;
  return (
    <section className={styles["part"]}>
      <h2>{words.turnTitle}</h2>
      <KeyRow>
        <Key
          onPress={() =>
            void write(engine, [
              { kind: "lighting.turned", on: plants, data: { clockwise_deg: QUARTER_deg } },
            ])
          }
        >
          {words.turnAll(plants.length)}
        </Key>
      </KeyRow>
    </section>
  );
}
