import type { HowGood as Good, Whose } from "@sillwood/bench/issued";
import type { Working } from "@sillwood/bench/working";
import { useState } from "react";
import { useAsk } from "../engine/use-ask.ts";
import { Ledger, Row } from "../parts/ledger.tsx";
import { useSlip } from "../parts/use-slip.ts";
import { WorkingSlip } from "../parts/working-slip.tsx";
import styles from "./how-good.module.css";

/** How good kept forecasts have been, in plain words; the sum lies behind them. Nothing while it is being reckoned. */
export function HowGood({ whose }: { readonly whose: Whose }) {
  const { value } = useAsk("howGood", whose);
  const slip = useSlip();
  const [working, setWorking] = useState<Working>();
  const [first] = value ?? [];
  if (!value || !first) return null;
  const open = (shown: Working) => {
    setWorking(shown);
    slip.open();
  };
  return (
    <section className={styles["good"]}>
      <h2>{first.title}</h2>
      <Ledger label={first.title}>
        {value.map((one) => (
          <Row key={one.work} onOpen={one.working && (() => open(one.working as Working))}>
            {linesOf(one).map((line) => (
              <span key={line}>{line}</span>
            ))}
          </Row>
        ))}
      </Ledger>
      <WorkingSlip slip={slip} working={working} />
    </section>
  );
}

const linesOf = ({ said, compared, waits }: Good): readonly string[] => [
  said,
  ...(compared ? [compared] : []),
  ...waits,
];
