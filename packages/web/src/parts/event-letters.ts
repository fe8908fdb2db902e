export interface Placed {
  /** Along the base line, px. */
  readonly x: number;
  readonly letter: string;
}

export interface Laid extends Placed {
  /** 0 stands on the base line, 1 over it, and so on. */
  readonly row_n: number;
}

/**
 * Letters of events so that none lies on another: a different one goes a row up, the same one twice within its own width is
 * said once. The events themselves are ticks on the line.
 *
 * @param width_px what a letter needs with its gap
 */
export function lettersLaid(events: readonly Placed[], width_px: number): readonly Laid[] {
  const laid: Laid[] = [];
  for (const { x, letter } of [...events].sort((a, b) => a.x - b.x)) {
    const near = laid.filter((other) => x - other.x < width_px);
    if (near.some((other) => other.letter === letter)) continue;
    let row_n = 0;
    while (near.some((other) => other.row_n === row_n)) row_n++;
    laid.push({ x, letter, row_n });
  }
  return laid;
}
