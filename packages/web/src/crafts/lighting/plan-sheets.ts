/** A piece of the plan that fits the width of the page: metres along the bench, and pixels. */
export interface Sheet<Spot> {
  readonly from_m: number;
  readonly to_m: number;
  readonly width_px: number;
  readonly spots: readonly Spot[];
}

interface Laid {
  readonly along_m: number;
}

/** Spots so near one another along the bench stand behind one another: one column. */
const ONE_COLUMN_m = 0.06;
/** Of what a pot takes, the least that stays between the last pot and the cut. */
const MARGIN = 0.55;

/**
 * Cuts a long bench into sheets, as a long coast is cut on a map: every pot keeps its place and each has room for a thumb.
 *
 * @param pot_px what one pot takes in width
 */
export function planSheets<Spot extends Laid>(
  spots: readonly Spot[],
  plan: { readonly left_m: number; readonly right_m: number },
  width_px: number,
  pot_px: number,
): readonly Sheet<Spot>[] {
  const columns = columnsOf(spots);
  if (columns.length === 0) return [{ from_m: plan.left_m, to_m: plan.right_m, width_px, spots: [] }];
  const places_m = columns.map((column) => column[0]?.along_m ?? 0);
  const gaps_m = places_m.slice(1).map((place_m, i) => place_m - (places_m[i] as number));
  const gap_m = gaps_m.length > 0 ? Math.min(...gaps_m) : Math.max(plan.right_m - plan.left_m, 0.2);
  const most_n = Math.max(1, Math.floor(width_px / pot_px));
  const sheets_n = Math.ceil(columns.length / most_n);
  const perSheet_n = Math.ceil(columns.length / sheets_n);
  const edge_m = gap_m * MARGIN;
  const pieces = Array.from({ length: sheets_n }, (_, i) =>
    columns.slice(i * perSheet_n, (i + 1) * perSheet_n),
  )
    .filter((piece) => piece.length > 0)
    .map((piece) => ({
      from_m: (piece[0]?.[0]?.along_m ?? 0) - edge_m,
      to_m: (piece.at(-1)?.[0]?.along_m ?? 0) + edge_m,
      spots: piece.flat(),
    }));
  const [only] = pieces;
  if (pieces.length === 1 && only) {
    // One sheet shows as much of the window beside the pots as leaves each pot its room.
    const most_m = Math.max(only.to_m - only.from_m, (width_px / pot_px) * gap_m);
    const spare_m = Math.max(0, most_m - (only.to_m - only.from_m)) / 2;
    return [
      {
        ...only,
        from_m: Math.max(Math.min(plan.left_m, only.from_m), only.from_m - spare_m),
        to_m: Math.min(Math.max(plan.right_m, only.to_m), only.to_m + spare_m),
        width_px,
      },
    ];
  }
  const widest_m = Math.max(...pieces.map(({ from_m, to_m }) => to_m - from_m));
  return pieces.map((piece) => ({ ...piece, width_px: (width_px * (piece.to_m - piece.from_m)) / widest_m }));
}

function columnsOf<Spot extends Laid>(spots: readonly Spot[]): readonly (readonly Spot[])[] {
  const columns: Spot[][] = [];
  for (const spot of [...spots].sort((a, b) => a.along_m - b.along_m)) {
    const last = columns.at(-1);
    if (last && spot.along_m - (last[0] as Spot).along_m < ONE_COLUMN_m) last.push(spot);
    else columns.push([spot]);
  }
  return columns;
}
