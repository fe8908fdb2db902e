import type { PlantRow } from "@sillwood/bench/pages";

/** Digits look for a number from its start; words for kind, spot or bench, each of them somewhere. */
export function isFound({ number, kind, spotName }: PlantRow, bench: string, wanted: string): boolean {
  const where = `${kind} ${spotName ?? ""} ${bench}`.toLocaleLowerCase();
  return wanted
    .toLocaleLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "")
    .every((word) =>
      /^\d+$/.test(word) ? number.startsWith(word) : where.includes(word) || number === word,
    );
}
