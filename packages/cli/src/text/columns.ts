/** Width of a text on the screen, in letters: marks that sit on another letter take no room. */
export const widthOf = (text: string): number => [...text.replace(/\p{M}|\u00AD/gu, "")].length;

const pad = (text: string, width_n: number, right: boolean): string => {
  const gap = " ".repeat(Math.max(0, width_n - widthOf(text)));
  return right ? gap + text : text + gap;
};

/** Rows of cells with their columns aligned; the last column is left as it is. */
export function columns(
  rows: readonly (readonly string[])[],
  { indent_n = 0, gap_n = 2, right = [] as readonly number[] } = {},
): string[] {
  const widths: number[] = [];
  for (const row of rows)
    for (const [i, cell] of row.entries()) widths[i] = Math.max(widths[i] ?? 0, widthOf(cell));
  return rows.map((row) =>
    (
      " ".repeat(indent_n) +
      row
        .map((cell, i) =>
          i === row.length - 1 && !right.includes(i) ? cell : pad(cell, widths[i] ?? 0, right.includes(i)),
        )
        .join(" ".repeat(gap_n))
    ).trimEnd(),
  );
}

/** Two texts at the two ends of a line; under one another where the line is too short. */
export function ends(left: string, right: string, width_n: number): string[] {
  const gap_n = width_n - widthOf(left) - widthOf(right);
  if (right === "") return [left];
  return gap_n >= 2 ? [left + " ".repeat(gap_n) + right] : [left, `  ${right}`];
}
