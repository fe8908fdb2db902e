import type { FruitPage } from "@sillwood/bench/crafts/fruiting";
import { Care } from "../../parts/ledger.tsx";
import { useFruitWords } from "./use-fruit.ts";

interface CaresProps {
  readonly page: FruitPage;
  /** What the hands are about to do here. */
  readonly of: FruitPage["cautions"][number]["key"];
}

/** The caution that belongs before this step. */
export function Cares({ page, of }: CaresProps) {
  const words = useFruitWords();
  const said = page.cautions.find(({ key }) => key === of)?.said;
  return said === undefined ? null : <Care word={words.care}>{said}</Care>;
}
