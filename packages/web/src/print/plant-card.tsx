import type { PlantId } from "@sillwood/bench/book";
import { useLocation, useParams } from "wouter";
import { nowMs } from "../engine/clock.ts";
import { useAsk } from "../engine/use-ask.ts";
import { Key, KeyRow } from "../parts/key.tsx";
import { Frame } from "../shell/frame.tsx";
import { ReadingNote } from "../shell/reading-note.tsx";
import { useSay } from "../shell/say.ts";
import { useWords } from "../words/words.ts";
import { Code } from "./code.tsx";
import styles from "./sheet.module.css";

/** One plant on an A5 card. */
export function PlantCard() {
  const { print: words, plant: plantWords } = useWords();
  const { plant = "" } = useParams<{ plant: string }>();
  const say = useSay();
  const [, go] = useLocation();
  const { value: page, error } = useAsk("plant", { plant: plant as PlantId });
  if (!page)
    return (
      <Frame where={words.plantCard}>
        {page === null ? <p>{plantWords.notHere}</p> : <ReadingNote error={error} />}
      </Frame>
    );
  return (
    <Frame
      where={words.plantCard}
      beside={page.number}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go(`/plant/${page.plant}`)}>{words.backTo}</Key>
          </KeyRow>
          <Key main onPress={() => window.print()}>
            {words.printIt}
          </Key>
        </>
      }
    >
      <article className={`${styles["sheet"]} ${styles["card"]}`}>
        <header className={styles["head"]}>
          <div className={styles["facts"]}>
            <p className={styles["big"]}>{page.number}</p>
            <p>{page.kind}</p>
            <p>{page.spot?.name}</p>
          </div>
          <Code text={page.number} size="18mm" />
        </header>
        <dl>
          {page.lines.map(({ craft, line }) => (
            <Pair
              key={craft}
              name={plantWords.crafts[craft as keyof typeof plantWords.crafts] ?? craft}
              said={line.said}
            />
          ))}
          {page.tasks.map((task) => (
            <Pair key={task.id} name={task.title} said={[task.said, task.then].filter(Boolean).join(", ")} />
          ))}
          {page.heads.map(({ craft, head }) => (
            <Pair key={craft} name={head.name} said={head.said} />
          ))}
          {page.facts.map(({ name, said, from }) => (
            <Pair key={name} name={name} said={`${said} (${from})`} />
          ))}
        </dl>
        <p style={{ paddingTop: "4mm" }}>{words.asOf(`${say.day(nowMs())} ${say.time(nowMs())}`)}</p>
      </article>
    </Frame>
  );
}

function Pair({ name, said }: { readonly name: string; readonly said: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{said}</dd>
    </>
  );
}
