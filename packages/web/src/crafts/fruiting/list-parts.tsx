import type { FruitPage, PlantLine } from "@sillwood/bench/crafts/fruiting";
import pages from "../../pages/pages.module.css";
import { DayBar } from "../../parts/day-bar.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Cares } from "./cares.tsx";
import styles from "./fruit.module.css";
import { useFruitWords } from "./use-fruit.ts";

interface ListPartsProps {
  readonly page: FruitPage;
  readonly onOpen: (plant: string) => void;
}

/** Whose flowers today, what is to thin, to pick, and when the rest is red. */
export function ListParts({ page, onOpen }: ListPartsProps) {
  const words = useFruitWords();
  const { open, thin, pick, calendar, stuck, plants } = page;
  const first_ms = page.now_ms;
  const last_ms = Math.max(first_ms + 1, ...calendar.map(({ dates_ms }) => dates_ms[17] ?? first_ms));
  return (
    <>
      <Part title={words.openNow}>
        <p className={pages["lead"]}>
          <strong>{open.said}</strong>
          {open.due_n > 0 && `: ${open.how}`}
        </p>
        <Lines lines={open.plants} onOpen={onOpen} label={words.openNow} />
      </Part>
      {pick.length > 0 && (
        <Part title={words.toPick}>
          <Cares page={page} of="food" />
          <Lines lines={pick} onOpen={onOpen} label={words.toPick} />
        </Part>
      )}
      {thin.length > 0 && (
        <Part title={words.toThin}>
          <Lines lines={thin} onOpen={onOpen} label={words.toThin} />
        </Part>
      )}
      {calendar.length > 0 && (
        <Part title={words.onTheWay}>
          <Ledger label={words.onTheWay}>
            {calendar.map((line) => (
              <Row key={`${line.plant} ${line.dates_ms[10]}`} onOpen={() => onOpen(line.plant)}>
                <span className={styles["row"]}>
                  <span>
                    <strong className={pages["number"]}>{line.number}</strong> {line.said}
                  </span>
                  <DayBar
                    dates_ms={line.dates_ms}
                    from_ms={first_ms}
                    to_ms={last_ms}
                    origin="assumed"
                    said={line.said}
                  />
                </span>
              </Row>
            ))}
          </Ledger>
        </Part>
      )}
      {stuck.length > 0 && (
        <Part title={words.stuck}>
          <Lines lines={stuck} onOpen={onOpen} label={words.stuck} />
        </Part>
      )}
      {plants.length > 0 && (
        <Part title={words.plants}>
          <Lines lines={plants} onOpen={onOpen} label={words.plants} />
        </Part>
      )}
    </>
  );
}

interface PartProps {
  readonly title: string;
  readonly children: React.ReactNode;
}

export function Part({ title, children }: PartProps) {
  return (
    <section className={pages["part"]}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}

interface LinesProps {
  readonly lines: readonly PlantLine[];
  readonly label: string;
  readonly onOpen: (plant: string) => void;
}

function Lines({ lines, label, onOpen }: LinesProps) {
  if (lines.length === 0) return null;
  return (
    <Ledger label={label}>
      {lines.map((line) => (
        <Row key={`${line.plant} ${line.said}`} onOpen={() => onOpen(line.plant)}>
          <strong className={pages["number"]}>{line.number}</strong> {line.said}{" "}
          <span className={pages["beside"]}>{line.kind}</span>
        </Row>
      ))}
    </Ledger>
  );
}
