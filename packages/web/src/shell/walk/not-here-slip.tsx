import type { Draft, Task } from "@sillwood/bench/round";
import { useState } from "react";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Slip } from "../../parts/slip.tsx";
import type { SlipState } from "../../parts/use-slip.ts";
import { useWords } from "../../words/words.ts";
import { write } from "../last-line.ts";
import { useRound } from "../round/use-round.ts";

interface Props {
  readonly slip: SlipState;
  readonly task: Task;
  readonly number: string;
  readonly onLeave: () => void;
}

/** The pot is not where the book says: it stands elsewhere, is gone, or can't be found. */
export function NotHereSlip({ slip, task, number, onLeave }: Props) {
  const { pot: words } = useWords();
  const engine = useEngine();
  const [asks, setAsks] = useState<"what" | "spot" | "how">("what");
  const close = () => {
    setAsks("what");
    slip.close();
  };
  const leave = (draft: Draft, said?: string) => {
    close();
    onLeave();
    void write(engine, [draft], said === undefined ? {} : { said: `${number} ${said}` });
  };
  const on = [task.plant];
  const endings = [
    ["died", words.died],
    ["thrown out", words.thrownOut],
    ["sold", words.sold],
    ["given", words.given],
  ] as const;
  return (
    <Slip
      slip={{ ...slip, close }}
      title={asks === "spot" ? words.whereIsIt : asks === "how" ? words.wentHow : words.notHere}
    >
      {asks === "what" && (
        <KeyRow>
          <Key wide onPress={() => setAsks("spot")}>
            {words.anotherSpot}
          </Key>
          <Key wide onPress={() => setAsks("how")}>
            {words.gone}
          </Key>
          <Key wide onPress={() => leave({ kind: "round.left", on, data: { text: words.leftCantFind } })}>
            {words.cantFind}
          </Key>
        </KeyRow>
      )}
      {asks === "how" && (
        <KeyRow>
          {endings.map(([how, said]) => (
            <Key key={how} wide onPress={() => leave({ kind: "plant.ended", on, data: { how } })}>
              {said}
            </Key>
          ))}
        </KeyRow>
      )}
      {asks === "spot" && (
        <SpotList
          plant={task.plant}
          onChoose={(spot) => leave({ kind: "plant.moved", on, data: { to: spot } })}
        />
      )}
    </Slip>
  );
}

/** All spots in walking order; those with a pot say which. */
export function SpotList({
  plant,
  onChoose,
}: {
  readonly plant: string;
  readonly onChoose: (spot: string) => void;
}) {
  const { value: round } = useRound();
  return (
    <>
      {round?.benches.map((bench) => (
        <section key={bench.bench}>
          <h3>{bench.name}</h3>
          <Ledger label={bench.name}>
            {[...new Map(bench.spots.map((spot) => [spot.spot, spot])).values()]
              .filter((spot) => spot.spot !== "" && spot.plant !== plant)
              .map((spot) => (
                <Row key={spot.spot} onOpen={() => onChoose(spot.spot)}>
                  {spot.spotName} {spot.number !== undefined && `(${spot.number})`}
                </Row>
              ))}
          </Ledger>
        </section>
      ))}
    </>
  );
}
