import type { SpotLit } from "@sillwood/bench/crafts/lighting";
import type { Working } from "@sillwood/bench/working";
import { OriginMark, Sourced } from "../../parts/origin.tsx";
import { useSay } from "../../shell/say.ts";
import styles from "./light.module.css";
import { glance } from "./plan.tsx";
import { useLightWords } from "./use-light.ts";

interface SpotSaidProps {
  readonly spot: SpotLit;
  readonly onWorking: (working: Working) => void;
}

/** One spot in words: what it gets, what is wanted there, when that stops being enough; each number opens its working. */
export function SpotSaid({ spot, onWorking }: SpotSaidProps) {
  const words = useLightWords();
  const say = useSay();
  const said = (value: number) => say.number(value, glance(value));
  const { light, need, short } = spot;
  return (
    <div className={styles["spot"]}>
      <p>
        <strong>{spot.said}</strong>
      </p>
      <div className={styles["numbers"]}>
        <span>
          <Sourced origin={light.origin} size="row" onOpen={() => onWorking(light.working)}>
            {words.dli(said(light.mid_mol_m2_d))}
          </Sourced>{" "}
          <OriginMark origin={light.origin} />
        </span>
        <span className={styles["beside"]}>
          {words.range(said(light.low_mol_m2_d), said(light.high_mol_m2_d))}
        </span>
        {need && (
          <span>
            <Sourced origin={need.origin} onOpen={() => onWorking(need.working)}>
              {words.wants(said(need.min_mol_m2_d))}
            </Sourced>{" "}
            <span className={styles["beside"]}>{need.stageSaid}</span>
          </span>
        )}
      </div>
      <p className={styles["beside"]}>
        {words.days(said(light.dull_mol_m2_d), said(light.sunny_mol_m2_d), light.from)}
      </p>
      {short && (
        <p>
          <Sourced origin={short.origin} onOpen={() => onWorking(short.working)}>
            {short.said}
          </Sourced>{" "}
          <OriginMark origin={short.origin} />
        </p>
      )}
      {short?.before && (
        <p className="serif">
          <s>{words.before(short.before.said)}</s>
        </p>
      )}
      {spot.debtSaid && <p>{spot.debtSaid}</p>}
      {spot.turnSaid && <p className={styles["beside"]}>{spot.turnSaid}</p>}
    </div>
  );
}
