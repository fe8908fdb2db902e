import type { BenchLight, SpotLit } from "@sillwood/bench/crafts/lighting";
import type { Working } from "@sillwood/bench/working";
import type { ReactNode } from "react";
import { useLocation } from "wouter";
import { Ledger, Row } from "../../parts/ledger.tsx";
import styles from "./light.module.css";
import { SpotSaid } from "./spot-said.tsx";

interface BenchBriefProps {
  readonly bench: BenchLight;
  /** The spot that was pressed, where it is one of this bench. */
  readonly chosen: SpotLit | undefined;
  readonly onWorking: (working: Working) => void;
  /** Its plan. */
  readonly children: ReactNode;
}

/** One of all benches: its plan, what it gives, the spot that was pressed, and the way to the bench alone. */
export function BenchBrief({ bench, chosen, onWorking, children }: BenchBriefProps) {
  const [, go] = useLocation();
  return (
    <section className={styles["part"]}>
      <h2>{bench.name}</h2>
      {children}
      {chosen && <SpotSaid spot={chosen} onWorking={onWorking} />}
      <Ledger>
        <Row onOpen={() => go(`/craft/light/${encodeURIComponent(bench.bench)}`)}>
          <span className={styles["begins"]}>{bench.said}</span>
        </Row>
      </Ledger>
    </section>
  );
}
