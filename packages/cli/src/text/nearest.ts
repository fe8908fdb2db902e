/** The known word that is fewest changes away from what was typed; undefined when none is near. */
export function nearest(typed: string, known: readonly string[]): string | undefined {
  const wanted = typed.toLowerCase();
  const scored = known
    .map((word) => ({ word, changes_n: changes(wanted, word.toLowerCase()) }))
    .sort((a, b) => a.changes_n - b.changes_n);
  const best = scored[0];
  return best && best.changes_n <= Math.max(1, Math.floor(wanted.length / 3)) ? best.word : undefined;
}

/** Letters to put in, take out or replace between two words; long words are cut, since nobody mistypes those. */
function changes(a: string, b: string): number {
  const [from, to] = [a.slice(0, 40), b.slice(0, 40)];
  let row = Array.from({ length: to.length + 1 }, (_, i) => i);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const replaced = (row[j - 1] as number) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[to.length] as number;
}
