import type { UnsureWindow } from "@sillwood/bench/crafts/lighting";
import { Key, KeyRow } from "../../parts/key.tsx";
import { useSay } from "../../shell/say.ts";
import styles from "./light.module.css";
import { glance } from "./plan.tsx";
import { useLightWords } from "./use-light.ts";

interface UnsureProps {
  readonly unsure: UnsureWindow;
  readonly onRead: (() => void) | undefined;
}

/** Two figures: it tells cases apart, no more. */
const roughly = (light_lux: number) => Number(light_lux.toPrecision(2));

/** Nobody knows which way the window faces: the two cases on one scale, and the one reading that tells them apart. */
export function Unsure({ unsure, onRead }: UnsureProps) {
  const words = useLightWords();
  const say = useSay();
  const top = Math.max(...unsure.cases.map(({ sunny_mol_m2_d }) => sunny_mol_m2_d), 0.1) * 1.05;
  const said = (value: number) => say.number(value, glance(value));
  return (
    <section className={styles["part"]} aria-label={unsure.said}>
      <p className="serif">{unsure.said}</p>
      {unsure.cases.map((one) => {
        const x = (value: number) => (value / top) * 100;
        return (
          <div key={one.faces_deg} className={styles["case"]}>
            <p>
              <strong className={styles["begins"]}>{one.said}.</strong> {words.dli(said(one.mid_mol_m2_d))}{" "}
              <span className={styles["beside"]}>
                {words.days(said(one.dull_mol_m2_d), said(one.sunny_mol_m2_d))}{" "}
                {words.noonLux(say.illuminance(roughly(one.noon_lux)))}
              </span>
            </p>
            <svg
              className={styles["scale"]}
              viewBox="0 0 100 12"
              preserveAspectRatio="none"
              aria-hidden="true"
            >
              <line x1="0" x2="100" y1="11" y2="11" className={styles["ground"]} />
              <rect
                x={x(one.dull_mol_m2_d)}
                width={Math.max(1, x(one.sunny_mol_m2_d) - x(one.dull_mol_m2_d))}
                y="2"
                height="8"
                className={styles["pale"]}
              />
              <line
                x1={x(one.mid_mol_m2_d)}
                x2={x(one.mid_mol_m2_d)}
                y1="0"
                y2="11"
                className={styles["mid"]}
              />
            </svg>
          </div>
        );
      })}
      <p>{unsure.ask}</p>
      {onRead && (
        <KeyRow>
          <Key onPress={onRead}>{words.readToTell}</Key>
        </KeyRow>
      )}
    </section>
  );
}
