import * as fc from "fast-check";
import { expect, it } from "vitest";
import type { Effect } from "../../book/effects.ts";
import type { Happening } from "../craft.ts";
import { lookKeys } from "./kinds.ts";
import { waterOutlook } from "./outlook.ts";
import type { WaterSlice } from "./slice.ts";
import { DAY_ms, GROWER, HELPER, looked, other, potKit, poured, START_ms, weighed } from "./test-kit.ts";

const DAYS_n = 40;
const at = fc.double({ min: 0, max: DAYS_n, noNaN: true }).map((day) => Math.round(START_ms + day * DAY_ms));
const by = fc.constantFrom(GROWER, HELPER);
const volume = fc.oneof(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 20_000 }));

const anyHappening: fc.Arbitrary<Happening> = fc.oneof(
  fc
    .tuple(
      at,
      volume,
      fc.constantFrom("yes", "no", "unknown"),
      fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
      by,
    )
    .map(([at_ms, volume_mL, drained, ran_frac, who]) =>
      poured(
        at_ms,
        {
          volume_mL,
          drained,
          ...(ran_frac === null || drained === "no" ? {} : { leachate_mL: ran_frac * volume_mL }),
        },
        who,
      ),
    ),
  fc
    .tuple(
      at,
      fc.oneof(fc.integer({ min: 300, max: 1100 }), fc.integer({ min: 1, max: 100_000 })),
      fc.constantFrom("as found", "just drained", "at lasting wilt"),
      fc.boolean(),
    )
    .map(([at_ms, weight_g, state, confirmed]) =>
      weighed(at_ms, { weight_g, state, ...(confirmed ? { confirmed: true as const } : {}) }),
    ),
  fc
    .tuple(at, fc.constantFrom(...lookKeys), fc.boolean(), by)
    .map(([at_ms, look, yes, who]) => looked(at_ms, { look, yes }, who)),
  fc
    .tuple(
      at,
      fc.oneof<fc.Arbitrary<Effect>[]>(
        fc.constant({ effect: "visited" }),
        fc.constant({ effect: "moved", to: "shelf" }),
        fc.constant({ effect: "pot changed" }),
        fc.record({
          effect: fc.constant("medium renewed"),
          renewed_frac: fc.double({ min: 0, max: 1, noNaN: true }),
        }),
        fc.record({
          effect: fc.constant("leaf area"),
          kept_frac: fc.double({ min: 0, max: 1, noNaN: true }),
        }),
        fc.record({ effect: fc.constant("mass"), change_g: fc.double({ min: -1000, max: 1000 }) }),
        fc.record({ effect: fc.constant("water out"), volume_mL: fc.double({ min: 0, max: 1e6 }) }),
        fc.record({ effect: fc.constant("roots"), kept_frac: fc.double({ min: 0, max: 1, noNaN: true }) }),
      ),
      by,
    )
    .map(([at_ms, effect, who]) => other(at_ms, effect, who)),
);

const anyLife = fc
  .array(anyHappening, { maxLength: 40 })
  .map((list) => [...list].sort((a, b) => a.at_ms - b.at_ms));

const anyRoom = fc.record({
  air_C: fc.double({ min: -30, max: 55, noNaN: true }),
  humidity_frac: fc.double({ min: 0, max: 1.2, noNaN: true }),
  ppfd_umol_m2_s: fc.double({ min: 0, max: 3000, noNaN: true }),
  outdoors: fc.boolean(),
  rain_mm: fc.double({ min: 0, max: 80, noNaN: true }),
});

const END_ms = START_ms + DAYS_n * DAY_ms;

function allNumbers(value: unknown, found: number[] = []): number[] {
  if (typeof value === "number") found.push(value);
  else if (value !== null && typeof value === "object")
    for (const each of Object.values(value)) allNumbers(each, found);
  return found;
}

function smallestEigenvalueSign(slice: WaterSlice): number {
  // A Cholesky factorisation of the correlation matrix, with a hair of jitter, stops at a negative pivot.
  const n = 7;
  const at_n = (row: number, column: number) => {
    const [a, b] = row <= column ? [row, column] : [column, row];
    return slice.state[n + a * n - (a * (a - 1)) / 2 + (b - a)] as number;
  };
  const sd = Array.from({ length: n }, (_, i) => Math.sqrt(at_n(i, i)));
  const lower = new Float64Array(n * n);
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = at_n(i, j) / ((sd[i] as number) * (sd[j] as number)) + (i === j ? 1e-6 : 0);
      for (let k = 0; k < j; k++) sum -= (lower[i * n + k] as number) * (lower[j * n + k] as number);
      if (i === j) {
        least = Math.min(least, sum);
        lower[i * n + i] = Math.sqrt(Math.max(sum, 0));
      } else lower[i * n + j] = (lower[j * n + j] as number) > 0 ? sum / (lower[j * n + j] as number) : 0;
    }
  }
  return least;
}

it("stays finite, within the pot and positive-definite whatever happens", () => {
  fc.assert(
    fc.property(anyLife, anyRoom, (life, room) => {
      const kit = potKit({}, room);
      const slice = kit.live(kit.start(), life, END_ms);
      for (const value of allNumbers(slice)) expect(Number.isFinite(value)).toBe(true);
      const [depletion_g, , , , , capacity_g] = slice.state as number[];
      expect(depletion_g).toBeGreaterThanOrEqual(0);
      expect(depletion_g).toBeLessThanOrEqual(1.2 * (capacity_g as number) + 1e-9);
      expect(smallestEigenvalueSign(slice)).toBeGreaterThan(0);
    }),
    { numRuns: 200 },
  );
});

it("keeps the water ledger closed: poured + rain = gained + used + drained + tipped, observations apart", () => {
  fc.assert(
    fc.property(anyLife, anyRoom, (life, room) => {
      const kit = potKit({}, room);
      const { ledger, state } = kit.live(kit.start(), life, END_ms);
      const gained_g = ledger.startDepletion_g - (state[0] as number);
      const inward_g = ledger.poured_g + ledger.rain_g;
      const outward_g = gained_g + ledger.used_g + ledger.drained_g + ledger.tipped_g + ledger.putRight_g;
      const scale_g = Math.max(1, inward_g, Math.abs(ledger.putRight_g), ledger.used_g, ledger.tipped_g);
      expect(Math.abs(inward_g - outward_g) / scale_g).toBeLessThan(1e-9);
      const poured_mL = life
        .flatMap(({ effects }) => effects)
        .reduce((sum, effect) => sum + (effect.effect === "water in" ? effect.volume_mL : 0), 0);
      expect(ledger.poured_g).toBeCloseTo(poured_mL, 6);
    }),
    { numRuns: 200 },
  );
});

it("gives the same slice when it was put away and taken up again between any two entries", () => {
  fc.assert(
    fc.property(anyLife, fc.double({ min: 0, max: 1, noNaN: true }), (life, share) => {
      const kit = potKit();
      const cut = Math.floor(share * life.length);
      const whole = kit.live(kit.start(), life, END_ms);
      const before = kit.live(kit.start(), life.slice(0, cut), life[cut - 1]?.at_ms ?? START_ms);
      const kept = JSON.parse(JSON.stringify(before)) as WaterSlice;
      // JSON drops what is undefined; everything else must come back to the last bit.
      expect(JSON.stringify(kit.live({ ...kit.start(), ...kept }, life.slice(cut), END_ms))).toBe(
        JSON.stringify(whole),
      );
    }),
    { numRuns: 100 },
  );
});

it("always has an outlook with twenty ascending dates and no NaN in what it says, in both languages", () => {
  fc.assert(
    fc.property(anyLife, anyRoom, (life, room) => {
      const kit = potKit({}, room);
      const slice = kit.live(kit.start(), life, END_ms);
      const outlook = waterOutlook(slice, kit.outward(END_ms + 8 * 3_600_000));
      const dates = outlook.line?.dates_ms ?? [];
      expect(dates).toHaveLength(20);
      for (let i = 1; i < dates.length; i++) expect(dates[i]).toBeGreaterThanOrEqual(dates[i - 1] as number);
      expect(JSON.stringify(outlook)).not.toMatch(/NaN|undefined|Infinity|null/);
    }),
    { numRuns: 60 },
  );
});
