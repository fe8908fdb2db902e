import { CAPACITY, DEPLETION, DRAINED, LEAF, meanOf, sdOf } from "@sillwood/science/water";
import { describe, expect, it } from "vitest";
import { DAY_ms, HOUR_ms, other, potKit, poured, START_ms, weighed } from "./test-kit.ts";

const kit = potKit();
const morning = (day: number) => START_ms + day * DAY_ms + 8 * HOUR_ms;
const known = kit.live(
  kit.start(),
  [
    poured(morning(0), { volume_mL: 250, drained: "yes" }),
    weighed(morning(0) + 1000, { weight_g: 700, state: "just drained" }),
    weighed(morning(2), { weight_g: 620, state: "as found" }),
    weighed(morning(4), { weight_g: 540, state: "as found" }),
  ],
  morning(4),
);
const after = (effect: Parameters<typeof other>[1]) =>
  kit.live(known, [other(morning(4), effect)], morning(4));

describe("events of others", () => {
  it("a move widens the demand's doubt and keeps its middle", () => {
    const moved = after({ effect: "moved", to: "shelf" });
    expect(sdOf(moved.state, LEAF)).toBeGreaterThan(sdOf(known.state, LEAF));
    expect(meanOf(moved.state, LEAF)).toBe(meanOf(known.state, LEAF));
  });

  it("a trim widens it too, and leaves work a little harder", () => {
    const trimmed = after({ effect: "leaf area", kept_frac: 0.5 });
    expect(sdOf(trimmed.state, LEAF)).toBeGreaterThan(sdOf(known.state, LEAF));
    expect(meanOf(trimmed.state, LEAF)).toBeCloseTo(meanOf(known.state, LEAF) - 0.1 * Math.log(0.5), 9);
  });

  it("clippings and fruit come off the drained weight", () => {
    expect(meanOf(after({ effect: "mass", change_g: -35 }).state, DRAINED)).toBeCloseTo(
      meanOf(known.state, DRAINED) - 35,
      6,
    );
  });

  it("water tipped out is gone", () => {
    const tipped = after({ effect: "water out", volume_mL: 20 });
    expect(meanOf(tipped.state, DEPLETION)).toBeCloseTo(meanOf(known.state, DEPLETION) + 20, 6);
    expect(tipped.ledger.tipped_g).toBeCloseTo(20, 6);
  });

  it("a new pot is a new record; a pinch of new medium is not", () => {
    const potted = kit.live(after({ effect: "pot changed" }), [], morning(5));
    expect(sdOf(potted.state, DRAINED)).toBeGreaterThan(50);
    expect(potted.weights).toEqual([]);
    expect(potted.capacityFrom).toBe("pot");
    const pinch = after({ effect: "medium renewed", renewed_frac: 0.1 });
    expect(pinch.state).toEqual(known.state);
  });

  it("a bigger pot promised by the facts is taken up with the next step", () => {
    const wide = potKit({ pot: { form: "round", top_cm: 20, depth_cm: 16 } });
    const grown = wide.live({ ...known, fresh: true }, [], morning(5));
    expect(meanOf(grown.state, CAPACITY)).toBeGreaterThan(3 * meanOf(known.state, CAPACITY));
  });

  it("a better leaf count keeps what was learned of leaves times factor", () => {
    const counted = potKit({
      leaves_n: { value: 60, at_ms: 0, entry: "e" as never },
      leafLength_cm: { value: 6, at_ms: 0, entry: "e" as never },
    });
    const before = Math.exp(meanOf(known.state, LEAF)) * known.leafArea_m2;
    const next = counted.live(known, [], morning(4) + 60_000);
    const product = Math.exp(meanOf(next.state, LEAF)) * next.leafArea_m2;
    const naive = Math.exp(meanOf(known.state, LEAF)) * next.leafArea_m2;
    expect(Math.abs(Math.log(product / before))).toBeLessThan(0.6 * Math.abs(Math.log(naive / before)));
  });

  it("rain outdoors fills the pot", () => {
    const dry = potKit({}, { outdoors: true, ppfd_umol_m2_s: 800 });
    const wet = potKit({}, { outdoors: true, ppfd_umol_m2_s: 800, rain_mm: 12 });
    const end = START_ms + 3 * DAY_ms;
    const without = dry.live(dry.start(), [], end);
    const with_ = wet.live(wet.start(), [], end);
    expect(meanOf(with_.state, DEPLETION)).toBeLessThan(meanOf(without.state, DEPLETION));
    expect(with_.ledger.rain_g).toBeGreaterThan(100);
    expect(without.ledger.used_g).toBeGreaterThan(60);
  });
});
