import type { PlantId } from "@sillwood/bench/book";
import type { BranchSaid, FruitPage } from "@sillwood/bench/crafts/fruiting";
import type { Working } from "@sillwood/bench/working";
import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { WorkingSlip } from "../../parts/working-slip.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { Cares } from "./cares.tsx";
import { ListParts } from "./list-parts.tsx";
import { PlantParts } from "./plant-parts.tsx";
import { useFruit, useFruitWords } from "./use-fruit.ts";

/** Screen 8: how many the light can feed, which stay on which branch, whose flowers today, and when red. */
export function FruitScreen() {
  const { plant } = useParams<{ plant?: string }>();
  const words = useFruitWords();
  const { page, refused, error } = useFruit(plant === undefined ? {} : { plant });
  if (!page)
    return (
      <Frame where={words.title}>
        {refused === undefined ? <ReadingNote error={error} /> : <p role="alert">{words.refused(refused)}</p>}
      </Frame>
    );
  return <Fruit key={plant ?? "all"} page={page} id={plant} />;
}

function Fruit({ page, id }: { readonly page: FruitPage; readonly id: string | undefined }) {
  const words = useFruitWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const slip = useSlip();
  const [working, setWorking] = useState<Working>();
  const [chosenId, setChosen] = useState<string>();
  const { plant } = page;
  const chosen = plant?.branches.find(({ branch }) => branch === chosenId);
  const open = (next: Working) => {
    setWorking(next);
    slip.open();
  };
  const show = (next: string) => go(`/craft/fruit/${encodeURIComponent(next)}`);
  const writeOf = (kind: string) => go(id === undefined ? `/write/${kind}` : `/write/${kind}/${id}`);
  useKeys(
    Object.fromEntries(
      (plant?.branches ?? []).map(({ branch }) => [branch.toLowerCase(), () => setChosen(branch)]),
    ),
  );
  return (
    <Frame
      where={plant ? words.titleOf(plant.number) : words.title}
      beside={plant?.kind}
      page={id ?? "all"}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => writeOf("fruiting.counted")}>{words.counted}</Key>
            <Key onPress={() => writeOf("fruiting.picked")}>{words.pickedKey}</Key>
          </KeyRow>
          <MainKey
            page={page}
            chosen={chosen}
            onWrite={(drafts, said) => void write(engine, drafts, said === undefined ? {} : { said })}
            onFlowers={() => writeOf("fruiting.flowered")}
          />
        </>
      }
    >
      <div className="measure">
        {!plant && <p className="serif">{page.said}</p>}
        <Cares page={page} of="hot" />
        {plant && (
          <PlantParts
            page={page}
            plant={plant}
            chosen={chosenId}
            onBranch={({ branch }) => setChosen(branch === chosenId ? undefined : branch)}
            onAim={(aim) =>
              void write(engine, [{ kind: "fruiting.aimed", on: [plant.plant], data: { aim } }])
            }
            onWorking={open}
          />
        )}
        {plant && (
          <KeyRow>
            <Key onPress={() => writeOf("fruiting.tagged")}>{words.tagKey}</Key>
            <Key onPress={() => writeOf("fruiting.coloured")}>{words.colourKey}</Key>
            <Key onPress={() => writeOf("plant.branched")}>{words.branchKey}</Key>
            <Key onPress={() => go("/craft/fruit")}>{words.all}</Key>
          </KeyRow>
        )}
        {!plant && <ListParts page={page} onOpen={show} />}
      </div>
      <WorkingSlip slip={slip} working={working} onChange={() => go("/settings/assumed")} />
    </Frame>
  );
}

type Drafts = Parameters<typeof write>[1];

interface MainKeyProps {
  readonly page: FruitPage;
  readonly chosen: BranchSaid | undefined;
  readonly onWrite: (drafts: Drafts, said?: string) => void;
  readonly onFlowers: () => void;
}

/** The day's act: pinch on the branch in hand, else brush what is open, else pick what is ripe, else say what is in flower. */
function MainKey({ page, chosen, onWrite, onFlowers }: MainKeyProps) {
  const words = useFruitWords();
  const { plant, open } = page;
  if (plant && chosen?.act) {
    const { kind, data } = chosen.act;
    const removed_n = (chosen.has_n ?? 0) - chosen.keep_n;
    return (
      <Key main onPress={() => onWrite([{ kind, on: [plant.plant], data }])}>
        {words.pinched(chosen.branch, removed_n)}
      </Key>
    );
  }
  const acts = plant ? open.acts.filter(({ on }) => on === plant.plant) : open.acts;
  const due_n = acts.reduce((sum, { data }) => sum + (data as { open_n: number }).open_n, 0);
  if (due_n > 0)
    return (
      <Key
        main
        onPress={() =>
          onWrite(
            acts.map(({ kind, on, data }) => ({ kind, on: [on as PlantId], data })),
            words.brushedSaid(due_n),
          )
        }
      >
        {words.allBrushed(due_n)}
      </Key>
    );
  const ripe = plant ? page.pick.find((line) => line.plant === plant.plant) : page.pick[0];
  if (ripe)
    return (
      <Key main onPress={() => onWrite([{ kind: ripe.act.kind, on: [ripe.plant], data: ripe.act.data }])}>
        {words.picked(ripe.number, ripe.fruits_n)}
      </Key>
    );
  return (
    <Key main onPress={onFlowers}>
      {words.seeFlowers}
    </Key>
  );
}
