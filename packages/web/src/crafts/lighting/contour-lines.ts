/** A place on the plan, metres along the bench and from the glass. */
export interface Place {
  readonly along_m: number;
  readonly fromGlass_m: number;
}

/** One height line: places of equal light, in order. */
export interface HeightLine {
  readonly level: number;
  readonly places: readonly Place[];
}

/** Values on the crossings of columns and rows, [row][column]. */
export interface Field {
  readonly along_m: readonly number[];
  readonly fromGlass_m: readonly number[];
  readonly values: readonly (readonly number[])[];
}

type Cut = readonly [Place, Place];

/**
 * Height lines of a field by marching squares: each cell is cut where a straight line between its corners crosses the level, and
 * cuts that meet are joined. @source Lorensen and Cline 1987, in two dimensions (from memory)
 */
export function heightLines(field: Field, levels: readonly number[]): readonly HeightLine[] {
  return levels.flatMap((level) =>
    joined(cutsOf(field, level)).map((places) => ({ level, places }) satisfies HeightLine),
  );
}

function cutsOf({ along_m, fromGlass_m, values }: Field, level: number): Cut[] {
  const cuts: Cut[] = [];
  for (let row = 0; row + 1 < fromGlass_m.length; row++) {
    for (let column = 0; column + 1 < along_m.length; column++) {
      const corner = (down: number, right: number) => ({
        along_m: along_m[column + right] as number,
        fromGlass_m: fromGlass_m[row + down] as number,
        value: values[row + down]?.[column + right] as number,
      });
      const ring = [corner(0, 0), corner(0, 1), corner(1, 1), corner(1, 0)] as const;
      const mean = ring.reduce((sum, { value }) => sum + value, 0) / 4;
      const crossings = ring.flatMap((a, i) => {
        const b = ring[(i + 1) % 4] as typeof a;
        if (a.value >= level === b.value >= level) return [];
        const part = (level - a.value) / (b.value - a.value);
        return [
          {
            along_m: a.along_m + part * (b.along_m - a.along_m),
            fromGlass_m: a.fromGlass_m + part * (b.fromGlass_m - a.fromGlass_m),
          },
        ];
      });
      const [a, b, c, d] = crossings;
      if (a && b && !c) cuts.push([a, b]);
      // A saddle: which corners belong together is what the middle says.
      if (a && b && c && d)
        cuts.push(
          ...((ring[0].value >= level === mean >= level
            ? [
                [a, b],
                [c, d],
              ]
            : [
                [d, a],
                [b, c],
              ]) as Cut[]),
        );
    }
  }
  return cuts;
}

const SAME_m = 1e-9;
const meet = (a: Place | undefined, b: Place | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  Math.abs(a.along_m - b.along_m) < SAME_m &&
  Math.abs(a.fromGlass_m - b.fromGlass_m) < SAME_m;

function joined(cuts: readonly Cut[]): readonly (readonly Place[])[] {
  const left = [...cuts];
  const lines: (readonly Place[])[] = [];
  for (let cut = left.pop(); cut; cut = left.pop()) {
    const line: Place[] = [...cut];
    for (let grew = true; grew; ) {
      const at = left.findIndex(([a, b]) =>
        [a, b].some((end) => meet(end, line[0]) || meet(end, line.at(-1))),
      );
      grew = at >= 0;
      if (!grew) break;
      const [[a, b]] = left.splice(at, 1) as [Cut];
      if (meet(a, line.at(-1))) line.push(b);
      else if (meet(b, line.at(-1))) line.push(a);
      else if (meet(a, line[0])) line.unshift(b);
      else line.unshift(a);
    }
    lines.push(line);
  }
  return lines;
}
