import { CAPACITY, DEPLETION, LEAF, meanOf, sdOf } from "@sillwood/science/water";
import { describe, expect, it } from "vitest";
import { waterOutlook } from "./outlook.ts";
import { DAY_ms, HOUR_ms, looked, potKit, poured, START_ms, weighed } from "./test-kit.ts";

const kit = potKit();
const morning = (day: number) => START_ms + day * DAY_ms + 8 * HOUR_ms;

/** Watered and weighed drained on day 0, weighed as found on days 2 and 4: a pot that is well known. */
const known = kit.live(
  kit.start(),
  [
    poured(morning(0), { volume_mL: 150, drained: "yes" }),
    weighed(morning(0) + 1000, { weight_g: 700, state: "just drained" }),
    weighed(morning(2), { weight_g: 640, state: "as found" }),
    weighed(morning(4), { weight_g: 585, state: "as found" }),
  ],
  morning(4) + HOUR_ms,
);

describe("weights", () => {
  it("narrow what is believed of water and demand", () => {
    const unseen = kit.live(
      kit.start(),
      [poured(morning(0), { volume_mL: 150, drained: "yes" })],
      morning(4) + HOUR_ms,
    );
    expect(sdOf(known.state, DEPLETION)).toBeLessThan(0.5 * sdOf(unseen.state, DEPLETION));
    expect(sdOf(known.state, LEAF)).toBeLessThan(0.7 * sdOf(unseen.state, LEAF));
    // 115 g lighter than just drained, and a pot that just drained may lack up to a tenth of its store.
    const tenth_g = 0.1 * meanOf(known.state, CAPACITY);
    expect(meanOf(known.state, DEPLETION)).toBeGreaterThan(115 - 5);
    expect(meanOf(known.state, DEPLETION)).toBeLessThan(115 + tenth_g);
  });

  it("a lighter pot than expected means a thirstier plant, a heavier one a slower", () => {
    const after = (weight_g: number) =>
      meanOf(kit.live(known, [weighed(morning(5), { weight_g, state: "as found" })], morning(5)).state, LEAF);
    expect(after(545)).toBeGreaterThan(after(558));
    expect(after(558)).toBeGreaterThan(after(568));
  });

  it("another pot's weight is held, not used, and said with the band expected", () => {
    const before = kit.live(known, [], morning(5));
    const held = kit.live(known, [weighed(morning(5), { weight_g: 912, state: "as found" })], morning(5));
    expect(held.state).toEqual(before.state);
    expect(held.held).toHaveLength(1);
    expect(held.held[0]?.high_g).toBeLessThan(912);
    const { problems } = waterOutlook(held, kit.outward(morning(5)));
    expect(problems.map(({ message }) => message).join()).toMatch(/912.*expected.*held/s);
  });

  it("the same weight, confirmed, is used: the drained weight gives way", () => {
    const sure = kit.live(
      known,
      [weighed(morning(5), { weight_g: 912, state: "as found", confirmed: true })],
      morning(5),
    );
    expect(sure.held).toHaveLength(0);
    const expected_g = (sure.state[3] as number) - (sure.state[0] as number);
    expect(Math.abs(expected_g - 912)).toBeLessThan(20);
  });

  it("a weight at lasting wilt teaches the capacity, which is then measured", () => {
    const wilted = kit.live(
      known,
      [weighed(morning(7), { weight_g: 480, state: "at lasting wilt" })],
      morning(7),
    );
    expect(meanOf(wilted.state, CAPACITY)).toBeGreaterThan(700 - 480 - 10);
    expect(meanOf(wilted.state, CAPACITY)).toBeLessThan(1.15 * (700 - 480));
    expect(sdOf(wilted.state, CAPACITY)).toBeLessThan(0.13 * meanOf(wilted.state, CAPACITY));
    const capacity = waterOutlook(wilted, kit.outward(morning(7))).workings.find(({ unit }) => unit === "g");
    expect(capacity?.origin).toBe("measured");
  });

  it("names what looks wrong: two weights in a minute, gain without water", () => {
    const twice = kit.live(
      known,
      [
        weighed(morning(5), { weight_g: 560, state: "as found" }),
        weighed(morning(5) + 20_000, { weight_g: 552, state: "as found" }),
        weighed(morning(6), { weight_g: 568, state: "as found" }),
      ],
      morning(6),
    );
    expect(twice.problems.map(({ what }) => what)).toEqual(["two weights", "gained without water"]);
  });

  it("weighed, watered and weighed again within a minute is a habit, not a slip", () => {
    const slice = kit.live(
      known,
      [
        weighed(morning(5), { weight_g: 560, state: "as found" }),
        poured(morning(5) + 20_000, { volume_mL: 250, drained: "yes" }),
        weighed(morning(5) + 40_000, { weight_g: 700, state: "just drained" }),
      ],
      morning(6),
    );
    expect(slice.problems.filter(({ what }) => what === "two weights")).toEqual([]);
  });

  it("a pot that got water without a word is not read as a plant that uses nothing", () => {
    const plain = kit.live(known, [], morning(7));
    const expected_g = meanOf(plain.state, 3) - meanOf(plain.state, DEPLETION);
    const wetter = kit.live(
      known,
      [weighed(morning(7), { weight_g: Math.round(expected_g + 55), state: "as found" })],
      morning(7),
    );
    expect(wetter.held).toEqual([]);
    expect(meanOf(wetter.state, DEPLETION)).toBeLessThan(meanOf(plain.state, DEPLETION) - 40);
    expect(meanOf(wetter.state, LEAF)).toBeGreaterThan(meanOf(plain.state, LEAF) - 0.45);
  });

  it("a scale's word outweighs a look: the same look moves a weighed pot far less", () => {
    const unseen = kit.live(
      kit.start(),
      [poured(morning(0), { volume_mL: 150, drained: "yes" })],
      morning(4) + HOUR_ms,
    );
    const wet = looked(morning(4) + HOUR_ms, { look: "wet", yes: true });
    const moves = (slice: typeof known) =>
      Math.abs(
        meanOf(kit.live(slice, [wet], morning(4) + HOUR_ms).state, DEPLETION) -
          meanOf(slice.state, DEPLETION),
      );
    expect(moves(unseen)).toBeGreaterThan(10);
    expect(moves(known)).toBeLessThan(0.5 * moves(unseen));
  });
});
