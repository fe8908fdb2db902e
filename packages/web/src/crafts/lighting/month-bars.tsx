import type { MonthBar, SpotLit } from "@sillwood/bench/crafts/lighting";
import { useState } from "react";
import { Key, KeyRow } from "../../parts/key.tsx";
import { useSay } from "../../shell/say.ts";
import styles from "./month-bars.module.css";
import { glance } from "./plan.tsx";
import { useLightWords } from "./use-light.ts";

interface MonthBarsProps {
  readonly spot: Pick<SpotLit, "year">;
  /** The month that the page shows, and the one of now; 1 to 12. */
  readonly month: number;
  readonly now: number;
}

/** A spot's year: pale from dull to sunny days, the notch the middle, the need as a line over it. Its table is one tap away. */
export function MonthBars({ spot, month, now }: MonthBarsProps) {
  const words = useLightWords();
  const say = useSay();
  const [isTable, setTable] = useState(false);
  const { year } = spot;
  if (year.length === 0) return null;
  const said = (value: number) => say.number(value, glance(value));
  const byMid = [...year].sort((a, b) => a.mid_mol_m2_d - b.mid_mol_m2_d);
  const [least, most] = [byMid[0] as MonthBar, byMid.at(-1) as MonthBar];
  const sentence = words.barsSaid(said(least.mid_mol_m2_d), least.name, said(most.mid_mol_m2_d), most.name);
  return (
    <figure className={styles["figure"]}>
      <figcaption className={styles["caption"]}>{words.barsTitle}</figcaption>
      {isTable ? (
        <Table year={year} said={said} />
      ) : (
        <Bars year={year} month={month} now={now} sentence={sentence} />
      )}
      <p className="serif">{sentence}</p>
      <KeyRow>
        <Key onPress={() => setTable(!isTable)}>{isTable ? words.asDrawing : words.asTable}</Key>
      </KeyRow>
    </figure>
  );
}

const COLUMN = 10;
const TALL = 100;

function Bars({
  year,
  month,
  now,
  sentence,
}: {
  readonly year: readonly MonthBar[];
  readonly month: number;
  readonly now: number;
  readonly sentence: string;
}) {
  const words = useLightWords();
  const say = useSay();
  const top = topOf(year);
  const y = (value: number) => TALL - (Math.min(value, top) / top) * TALL;
  const lastNeed = year.findLast(({ need_mol_m2_d }) => need_mol_m2_d !== undefined)?.need_mol_m2_d;
  return (
    <div className={styles["bars"]}>
      <ol className={styles["ticks"]} aria-hidden="true">
        {[top, top / 2, 0].map((tick) => (
          <li key={tick}>{say.number(tick)}</li>
        ))}
      </ol>
      <div className={styles["field"]}>
        <svg
          className={styles["drawing"]}
          viewBox={`0 0 ${COLUMN * year.length} ${TALL}`}
          preserveAspectRatio="none"
          role="img"
          aria-label={sentence}
        >
          <title>{sentence}</title>
          {[0, 0.5, 1].map((part) => (
            <line
              key={part}
              x1="0"
              x2={COLUMN * year.length}
              y1={TALL * part}
              y2={TALL * part}
              className={styles["ruled"]}
            />
          ))}
          {year.map((bar, i) => (
            <g key={bar.month}>
              <rect
                x={i * COLUMN + 1.5}
                width={COLUMN - 3}
                y={y(bar.sunny_mol_m2_d)}
                height={Math.max(1, y(bar.dull_mol_m2_d) - y(bar.sunny_mol_m2_d))}
                className={bar.month === month ? styles["asked"] : styles["pale"]}
              />
              <line
                x1={i * COLUMN + 1.5}
                x2={(i + 1) * COLUMN - 1.5}
                y1={y(bar.mid_mol_m2_d)}
                y2={y(bar.mid_mol_m2_d)}
                className={styles["mid"]}
              />
              {bar.need_mol_m2_d !== undefined && (
                <line
                  x1={i * COLUMN}
                  x2={(i + 1) * COLUMN}
                  y1={y(bar.need_mol_m2_d)}
                  y2={y(bar.need_mol_m2_d)}
                  className={styles["need"]}
                />
              )}
            </g>
          ))}
          <line
            x1={(now - 0.5) * COLUMN}
            x2={(now - 0.5) * COLUMN}
            y1="0"
            y2={TALL}
            className={styles["now"]}
          />
        </svg>
        <span
          className={styles["nowSaid"]}
          style={{ left: `${((now - 0.5) / 12) * 100}%` }}
          aria-hidden="true"
        >
          {words.now}
        </span>
        {lastNeed !== undefined && (
          <span
            className={styles["needSaid"]}
            style={{ bottom: `${(Math.min(lastNeed, top) / top) * 100}%` }}
            aria-hidden="true"
          >
            {words.need} {say.number(lastNeed)}
          </span>
        )}
      </div>
      <ol className={styles["letters"]} aria-hidden="true">
        {year.map(({ month: n, letter }) => (
          <li key={n} className={n === month ? styles["askedLetter"] : undefined}>
            {letter}
          </li>
        ))}
      </ol>
    </div>
  );
}

/** The scale's top: an even number that holds the brightest days and the need. */
function topOf(year: readonly MonthBar[]): number {
  const most = Math.max(
    ...year.map(({ sunny_mol_m2_d, need_mol_m2_d = 0 }) => Math.max(sunny_mol_m2_d, need_mol_m2_d)),
    1,
  );
  const step = most > 40 ? 20 : most > 16 ? 10 : most > 8 ? 4 : 2;
  return Math.ceil(most / step) * step;
}

function Table({
  year,
  said,
}: {
  readonly year: readonly MonthBar[];
  readonly said: (value: number) => string;
}) {
  const words = useLightWords();
  return (
    <table className={styles["table"]}>
      <thead>
        <tr>
          <th scope="col">{words.month}</th>
          <th scope="col">{words.middle}</th>
          <th scope="col">{words.dullToSunny}</th>
          <th scope="col">{words.need}</th>
        </tr>
      </thead>
      <tbody>
        {year.map((bar) => (
          <tr key={bar.month}>
            <th scope="row">{bar.name}</th>
            <td>{said(bar.mid_mol_m2_d)}</td>
            <td>
              {said(bar.dull_mol_m2_d)} – {said(bar.sunny_mol_m2_d)}
            </td>
            <td>{bar.need_mol_m2_d === undefined ? "" : said(bar.need_mol_m2_d)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
