import type { PlantPage } from "@sillwood/bench/round";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { OriginMark, Sourced } from "../../parts/origin.tsx";
import { useWords } from "../../words/words.ts";
import styles from "./plant-screen.module.css";

/** What is written of the plant, each with where it comes from. */
export function PlantFacts({ page }: { readonly page: PlantPage }) {
  const { plant: words } = useWords();
  if (page.facts.length === 0) return null;
  return (
    <section>
      <h2 className={styles["part"]}>{words.facts}</h2>
      <Ledger label={words.facts}>
        {page.facts.map(({ name, said, origin, from }) => (
          <Row key={name}>
            <span style={{ flex: "1 1 auto" }}>{name}</span>
            <span>
              <Sourced origin={origin}>{said}</Sourced> <OriginMark origin={origin} />
            </span>
            <span
              className="serif"
              style={{ flexBasis: "100%", color: "var(--ink2)", fontSize: "var(--t-small)" }}
            >
              {from}
            </span>
          </Row>
        ))}
      </Ledger>
    </section>
  );
}
