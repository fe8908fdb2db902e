/** At most so much is held in memory as rows; a year of a logger every five minutes is about 4 MB. */
const MOST_B = 20_000_000;

export type Cut =
  | { readonly cells: readonly (readonly string[])[] }
  | { readonly problem: "too large" | "not rows"; readonly said: string };

/** A file cut into rows of cells, whatever parts its columns. The reader of such files is fetched only now. */
export async function cutRows(file: File): Promise<Cut> {
  if (file.size > MOST_B) return { problem: "too large", said: (file.size / 1e6).toFixed(0) };
  const text = await file.text();
  if (text.includes("\u0000")) return { problem: "not rows", said: "NUL" };
  const { default: papa } = await import("papaparse");
  const { data, errors } = papa.parse<string[]>(text.replace(/^\uFEFF/, ""), { skipEmptyLines: "greedy" });
  // A file of one column has no delimiter to be found, which is no fault of its.
  const fault = errors.find(({ code }) => code !== "UndetectableDelimiter");
  if (fault) return { problem: "not rows", said: `${(fault.row ?? 0) + 1}: ${fault.message}` };
  return { cells: data };
}
