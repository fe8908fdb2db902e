import type { PlantId } from "@sillwood/bench/book";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Slip } from "../../parts/slip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { useWords } from "../../words/words.ts";
import { write } from "../last-line.ts";

/** The pot's medium was never written: say so, and let it be said. */
export function MediumAsk({ plant }: { readonly plant: PlantId }) {
  const { plant: words } = useWords();
  const engine = useEngine();
  const slip = useSlip();
  const media = ["spongy", "bark", "gritty"] as const;
  return (
    <div>
      <p className="serif">{words.noMedium}</p>
      <KeyRow>
        <Key onPress={slip.open}>{words.sayMedium}</Key>
      </KeyRow>
      <Slip slip={slip} title={words.sayMedium}>
        <KeyRow>
          {media.map((medium) => (
            <Key
              key={medium}
              wide
              onPress={() => {
                slip.close();
                void write(engine, [{ kind: "plant.described", on: [plant], data: { medium } }]);
              }}
            >
              {words.media[medium]}
            </Key>
          ))}
        </KeyRow>
      </Slip>
    </div>
  );
}
