import { useLocation } from "wouter";
import { screensOf } from "../../crafts/index.ts";
import { useAsk } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { HowGood } from "../../shell/how-good.tsx";
import { useWords } from "../../words/words.ts";
import styles from "../pages.module.css";

const WHOLE_BOOK = {};

/** A row a craft that is built, with what waits there; then the desks that belong to no craft. */
export function Desk() {
  const { desk: words } = useWords();
  const { value: crafts } = useAsk("crafts", {});
  const [, go] = useLocation();
  const others = [
    [words.wrong, "/wrong"],
    [words.benches, "/benches"],
    [words.away, "/away"],
    [words.supplies, "/supplies"],
    [words.reckoner, "/reckon"],
    [words.settings, "/settings"],
  ] as const;
  return (
    <Frame
      where={words.title}
      keys={
        <Key main onPress={() => go("/")}>
          {words.toTheRound}
        </Key>
      }
    >
      <Ledger label={words.crafts}>
        {(crafts ?? []).map(({ craft, due_n }) => {
          const screens = screensOf(craft);
          const Mark = screens?.mark;
          return (
            <Row key={craft} onOpen={() => go(screens?.pages?.[0]?.path ?? "/")}>
              <span className={styles["line"]}>
                <span>
                  {Mark && (
                    <span className={styles["mark"]}>
                      <Mark />
                    </span>
                  )}
                  {words.craftNames[craft] ?? craft}
                </span>
                <span className={styles["beside"]}>{words.waits(due_n)}</span>
              </span>
            </Row>
          );
        })}
        {others.map(([said, to]) => (
          <Row key={to} onOpen={() => go(to)}>
            {said}
          </Row>
        ))}
      </Ledger>
      <HowGood whose={WHOLE_BOOK} />
    </Frame>
  );
}
