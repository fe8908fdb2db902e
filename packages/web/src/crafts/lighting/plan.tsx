import type { BenchLight, SpotLit } from "@sillwood/bench/crafts/lighting";
import { useSay } from "../../shell/say.ts";
import { HeightLines } from "./height-lines.tsx";
import styles from "./plan.module.css";
import { planSheets } from "./plan-sheets.ts";
import { useLightWords } from "./use-light.ts";
import { useSize } from "./use-size.ts";

interface PlanProps {
  readonly bench: BenchLight;
  readonly chosen: string | undefined;
  /** The plant that is about to move. */
  readonly moving: string | undefined;
  readonly onPress: (spot: SpotLit) => void;
  /** Of several plans on a page one holds the place in the order of the keyboard. */
  readonly isFirst: boolean;
}

/** What a pot with its number needs, in the size of the words. */
const POT_rem = 3.1;
const ROW_rem = 4.2;
const GLASS_rem = 1.6;

/** A light at a glance: whole, but not where little light would round to none. */
export const glance = (value: number): number => (value < 3 ? 1 : 0);

/** The bench from above in standing order, with the window edge and its light as height lines; one row a shelf, cut where it must be. */
export function Plan({ bench, chosen, moving, onPress, isFirst }: PlanProps) {
  const words = useLightWords();
  const [box, size] = useSize<HTMLDivElement>();
  const rows_n = new Set(bench.spots.map(({ fromGlass_m }) => Math.round(fromGlass_m / 0.12))).size;
  const { near_m, far_m } = bench.plan;
  const rem_px = size?.rem_px ?? 16;
  const height_px = (GLASS_rem + ROW_rem * Math.max(1, Math.min(4, rows_n)) + 0.8) * rem_px;
  const span_m = Math.max(0.1, far_m - Math.min(near_m, 0));
  const top_px = (fromGlass_m: number) =>
    GLASS_rem * 0.4 * rem_px + (fromGlass_m / span_m) * (height_px - GLASS_rem * 0.4 * rem_px);
  const sheets = size ? planSheets(bench.spots, bench.plan, size.width_px, POT_rem * rem_px) : [];
  const first = bench.spots.find(({ spot }) => spot === chosen) ?? (isFirst ? bench.spots[0] : undefined);
  return (
    <section className={styles["plan"]} aria-label={words.planTitle(bench.name)}>
      <p className={styles["edgeSaid"]}>
        <span>{bench.windowSaid}</span>
      </p>
      <div ref={box} className={styles["sheets"]}>
        {sheets.map((sheet) => (
          <div
            key={sheet.from_m}
            className={styles["sheet"]}
            style={{ width: `${sheet.width_px}px`, height: `${height_px}px` }}
          >
            <HeightLines
              bench={bench}
              from_m={sheet.from_m}
              to_m={sheet.to_m}
              width_px={sheet.width_px}
              height_px={height_px}
              top_px={top_px}
            />
            {sheet.spots.map((spot) => (
              <Pot
                key={spot.spot}
                spot={spot}
                isChosen={spot.spot === chosen}
                isMoving={moving !== undefined && spot.plant === moving}
                isNext={spot.spot === first?.spot}
                left_px={((spot.along_m - sheet.from_m) / (sheet.to_m - sheet.from_m)) * sheet.width_px}
                top_px={Math.min(height_px - 1.5 * rem_px, Math.max(2.2 * rem_px, top_px(spot.fromGlass_m)))}
                onPress={() => onPress(spot)}
              />
            ))}
          </div>
        ))}
      </div>
      <p className={styles["edgeSaid"]}>
        <span>{words.frontEdge}</span>
      </p>
      {isFirst && (
        <p className={styles["how"]}>
          {words.planHow} <span className="for-readers">{words.planHowReaders}</span>
        </p>
      )}
    </section>
  );
}

interface PotProps {
  readonly spot: SpotLit;
  readonly isChosen: boolean;
  readonly isMoving: boolean;
  readonly isNext: boolean;
  readonly left_px: number;
  readonly top_px: number;
  readonly onPress: () => void;
}

function Pot({ spot, isChosen, isMoving, isNext, left_px, top_px, onPress }: PotProps) {
  const say = useSay();
  const { mid_mol_m2_d, origin } = spot.light;
  return (
    <button
      type="button"
      className={`${styles["pot"]} ${styles[spot.state]} ${isMoving ? styles["moving"] : ""}`}
      style={{ left: `${left_px}px`, top: `${top_px}px` }}
      aria-label={spot.said}
      aria-pressed={isChosen}
      tabIndex={isNext ? 0 : -1}
      data-spot={spot.spot}
      onClick={onPress}
    >
      <span className={styles["number"]}>{spot.number ?? "·"}</span>
      <span className={`${styles["given"]} ${styles[origin]}`}>
        {say.number(mid_mol_m2_d, glance(mid_mol_m2_d))}
      </span>
    </button>
  );
}
