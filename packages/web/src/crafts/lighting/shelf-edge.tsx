import { useLocation, useParams } from "wouter";
import { Key, KeyRow } from "../../parts/key.tsx";
import sheet from "../../print/sheet.module.css";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { glance, Plan } from "./plan.tsx";
import styles from "./shelf-edge.module.css";
import { useLight, useLightWords } from "./use-light.ts";

/** The plan with its numbers on paper, to stand at the shelf edge. */
export function ShelfEdge() {
  const { bench: id = "" } = useParams<{ bench: string }>();
  const words = useLightWords();
  const { print } = useWords();
  const say = useSay();
  const [, go] = useLocation();
  const { page, refused, error } = useLight({ bench: id });
  const bench = page?.benches.find((one) => one.bench === id);
  if (!page || !bench)
    return (
      <Frame where={words.print}>
        {refused !== undefined && <p role="alert">{words.refused(refused)}</p>}
        {page && <p className="serif">{words.noSuchBench}</p>}
        {!page && refused === undefined && <ReadingNote error={error} />}
      </Frame>
    );
  const said = (value: number) => say.number(value, glance(value));
  return (
    <Frame
      where={words.print}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go(`/craft/light/${encodeURIComponent(id)}`)}>{print.backTo}</Key>
          </KeyRow>
          <Key main onPress={() => window.print()}>
            {words.printIt}
          </Key>
        </>
      }
    >
      <article className={`${sheet["sheet"]} ${styles["edge"]}`}>
        <h2>{words.shelfTitle(bench.name, page.monthSaid)}</h2>
        <p>{bench.said}</p>
        <Plan bench={bench} chosen={undefined} moving={undefined} onPress={() => undefined} isFirst />
        {bench.timer && (
          <p>
            {words.timer}: {bench.timer.said}
          </p>
        )}
        <table className={styles["table"]}>
          <thead>
            <tr>
              <th scope="col">{words.spotHead}</th>
              <th scope="col">{words.potHead}</th>
              <th scope="col">{words.lightHead}</th>
              <th scope="col">{words.needHead}</th>
              <th scope="col">{words.shortHead}</th>
            </tr>
          </thead>
          <tbody>
            {bench.spots.map((spot) => (
              <tr key={spot.spot}>
                <th scope="row">{spot.name}</th>
                <td>{spot.number ?? words.free}</td>
                <td>
                  {said(spot.light.mid_mol_m2_d)} ({said(spot.light.low_mol_m2_d)} –{" "}
                  {said(spot.light.high_mol_m2_d)})
                </td>
                <td>{spot.need ? said(spot.need.min_mol_m2_d) : ""}</td>
                <td>{spot.short?.said ?? ""}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className={styles["asOf"]}>{words.asOf(`${say.day(page.now_ms)} ${say.time(page.now_ms)}`)}</p>
      </article>
    </Frame>
  );
}
