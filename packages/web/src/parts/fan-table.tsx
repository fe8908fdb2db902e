import { useSay } from "../shell/say.ts";
import { useWords } from "../words/words.ts";
import styles from "./fan-chart.module.css";
import type { ShownFan } from "./fan-shown.ts";

/** The chart as a table: a row a day, and every event. */
export function FanTable({ chart }: { readonly chart: ShownFan }) {
  const { plant } = useWords();
  const say = useSay();
  const ahead = firstOfEachDay(chart.ahead, say.day);
  const past = firstOfEachDay(chart.past, say.day).slice(-7);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
    <section className={styles["table"]} tabIndex={0} aria-label={chart.name}>
      <table>
        <thead>
          <tr>
            <th scope="col">{plant.time}</th>
            <th scope="col">
              {plant.usually}, {chart.unit}
            </th>
            <th scope="col">{plant.eightInTen}</th>
          </tr>
        </thead>
        <tbody>
          {past.map(({ at_ms, value }) => (
            <tr key={at_ms}>
              <th scope="row">{say.day(at_ms)}</th>
              <td>{say.number(value, chart.digits_n)}</td>
              <td />
            </tr>
          ))}
          {ahead.map(({ at_ms, p10, p50, p90 }) => (
            <tr key={at_ms}>
              <th scope="row">{say.day(at_ms)}</th>
              <td>{say.number(p50, chart.digits_n)}</td>
              <td>
                {say.number(p10, chart.digits_n)} – {say.number(p90, chart.digits_n)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {chart.events.map(({ at_ms, letter, said }) => (
        <p key={`${at_ms} ${said}`}>
          {letter} {say.day(at_ms)} {say.time(at_ms)}: {said}
        </p>
      ))}
    </section>
  );
}

function firstOfEachDay<Point extends { readonly at_ms: number }>(
  points: readonly Point[],
  dayOf: (at_ms: number) => string,
): readonly Point[] {
  const days = new Map<string, Point>();
  for (const point of points) if (!days.has(dayOf(point.at_ms))) days.set(dayOf(point.at_ms), point);
  return [...days.values()];
}
