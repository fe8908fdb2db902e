import type { BranchSaid, FruitPage, PlantFruit } from "@sillwood/bench/crafts/fruiting";
import type { Working } from "@sillwood/bench/working";
import pages from "../../pages/pages.module.css";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger } from "../../parts/ledger.tsx";
import { OriginMark, Sourced } from "../../parts/origin.tsx";
import { BranchDrawing } from "./branch-drawing.tsx";
import { Cares } from "./cares.tsx";
import styles from "./fruit.module.css";
import { Part } from "./list-parts.tsx";
import { useFruitWords } from "./use-fruit.ts";

interface PlantPartsProps {
  readonly page: FruitPage;
  readonly plant: PlantFruit;
  readonly chosen: string | undefined;
  readonly onBranch: (branch: BranchSaid) => void;
  readonly onAim: (aim: "full" | "many") => void;
  readonly onWorking: (working: Working) => void;
}

/** One plant: how many it can fill, which stay on which branch, when they are red, what to do with them. */
export function PlantParts({ page, plant, chosen, onBranch, onAim, onWorking }: PlantPartsProps) {
  const words = useFruitWords();
  const { branches, feeds, set } = plant;
  return (
    <>
      <p className={pages["lead"]}>
        <Told working={feeds.working} said={feeds.said} onWorking={onWorking} />
      </p>
      <Part title={words.keepHere}>
        {branches.length === 0 ? (
          <p className={pages["note"]}>{words.noBranches}</p>
        ) : (
          <>
            <BranchDrawing
              branches={branches}
              chosen={chosen}
              said={words.drawing(
                branches.map(({ branch, said }) => words.branchSaid(branch, said)).join(", "),
              )}
            />
            <div className={styles["branches"]}>
              {branches.map((branch) => (
                <Key key={branch.branch} pressed={branch.branch === chosen} onPress={() => onBranch(branch)}>
                  {words.branchSaid(branch.branch, branch.said)}
                </Key>
              ))}
            </div>
          </>
        )}
        <p>{plant.totalSaid}</p>
        {plant.trySaid !== undefined && <p>{plant.trySaid}</p>}
        <p className={pages["note"]}>{plant.priceSaid}</p>
        <KeyRow label={words.wanted}>
          {(["full", "many"] as const).map((aim) => (
            <Key key={aim} pressed={plant.aim === aim} onPress={() => onAim(aim)}>
              {words[aim]}
            </Key>
          ))}
        </KeyRow>
      </Part>
      <Part title={words.flowersPart}>
        <p>
          <Told working={set.working} said={set.said} onWorking={onWorking} />
        </p>
        {plant.droppedSaid !== undefined && <p>{plant.droppedSaid}</p>}
      </Part>
      {plant.ripe.length > 0 && (
        <Part title={words.ripePart}>
          <Ledger label={words.ripePart}>
            {plant.ripe.map((cohort) => (
              <li key={cohort.tag} className={styles["row"]}>
                <Told working={cohort.working} said={cohort.said} onWorking={onWorking} />
                <span className={pages["beside"]}>{words.tagSaid(cohort.tag, cohort.branch)}</span>
              </li>
            ))}
          </Ledger>
        </Part>
      )}
      <Part title={words.storePart}>
        <Cares page={page} of="food" />
        <p>{plant.pickSaid}</p>
        <p>{plant.earlySaid}</p>
        <p>{plant.storeSaid}</p>
      </Part>
      <Part title={words.heatPart}>
        <p>{plant.heatSaid}</p>
      </Part>
      <Part title={words.seedPart}>
        <Cares page={page} of="seed" />
        <p>{plant.seedSaid}</p>
        {plant.lots.map(({ lot, said }) => (
          <p key={lot}>
            <strong>{lot}</strong>: {said}
          </p>
        ))}
      </Part>
    </>
  );
}

interface ToldProps {
  readonly working: Working;
  readonly said: string;
  readonly onWorking: (working: Working) => void;
}

function Told({ working, said, onWorking }: ToldProps) {
  return (
    <>
      <Sourced origin={working.origin} onOpen={() => onWorking(working)}>
        {said}
      </Sourced>{" "}
      <OriginMark origin={working.origin} />
    </>
  );
}
