import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { GROWER, plantId, START_ms, seeded, TEST_SITE, testPen } from "../../test/toy.ts";
import type { Entry } from "../book/entry.ts";
import { crafts } from "../crafts/registry.ts";
import { createLedger, type Ledger } from "../house/ledger.ts";
import { deskAt } from "../pages/desk.ts";
import { plantKinds } from "../plants/kinds.ts";
import { forecastsToKeep, isIssueDue } from "./issue.ts";
import { howGood, issuedMissing } from "./page.ts";
import { parseForecasts } from "./text.ts";

const HOUR_ms = 3_600_000;
const BUCKET = "01980000-0000-7000-8000-0000000000d1/2026-01/all";
const NOW_ms = START_ms + 80 * 24 * HOUR_ms;
const newLedger = () => createLedger({ crafts, site: TEST_SITE });
const deskOf = (ledger: Ledger, now_ms = NOW_ms, language: "en" | "de" = "en") =>
  deskAt(ledger, { now_ms, language, units: "metric" });
const watering = (ledger: Ledger, language: "en" | "de" = "en") => {
  const [first] = howGood(deskOf(ledger, NOW_ms, language), { plant: plantId(1) });
  if (!first) throw new Error("nothing is forecast");
  return first;
};

interface Life {
  readonly entries: readonly Entry[];
  readonly files: ReadonlyMap<string, string>;
}

/** Two pots through seventy days: one weighed every morning, one never; the first round of each day keeps its forecasts. */
function live(drying: (day: number) => number): Life {
  const ledger = newLedger();
  const pen = testPen(ledger, GROWER);
  const entries: Entry[] = [];
  const files = new Map<string, string>();
  const add = (...more: Entry[]) => {
    entries.push(...more);
    ledger.add(more);
  };
  const spots = [1, 2].map((n) => ({ id: `s${n}`, name: `${n}` }));
  const sill = { name: "Sill", place: "sill", outdoors: false, order_n: 0, windowFaces_deg: 180, spots };
  add(
    pen.at(0, { kind: "bench.laid", on: ["b"], data: sill }),
    ...[1, 2].map((n) =>
      pen.at(0.1 * n, {
        kind: plantKinds.brought.kind,
        on: [plantId(n)],
        data: {
          number: n,
          habit: "thin",
          medium: "spongy",
          spot: `s${n}`,
          pot: { form: "round", top_cm: 12, depth_cm: 9 },
        },
      }),
    ),
  );
  let used_g = 0;
  for (let day = 0; day < 70; day++) {
    const at = (hour: number, kind: string, data: object, n = 1) =>
      pen.at(24 * day + hour, { kind, on: [plantId(n)], data: data as never });
    if (day > 0) used_g += drying(day);
    const weight_g = Math.round(640 - used_g);
    if (day > 0) add(at(1, "watering.weighed", { weight_g, state: "as found" }));
    const now_ms = START_ms + (24 * day + 1.1) * HOUR_ms;
    const desk = deskOf(ledger, now_ms);
    expect(isIssueDue(desk)).toBe(true);
    const kept = forecastsToKeep(desk, { [BUCKET]: { n: day, h: "0123456789abcdef" } });
    if (!kept) throw new Error("nothing to keep");
    files.set(kept.sha256, kept.text);
    add(pen.at(24 * day + 1.1, kept.draft));
    expect(isIssueDue(deskOf(ledger, now_ms + HOUR_ms))).toBe(false);
    if (used_g < 150 && day > 0) continue;
    for (const n of [1, 2]) add(at(2, "watering.watered", { volume_mL: 400, drained: "yes" }, n));
    add(at(2.5, "watering.weighed", { weight_g: 640, state: "just drained" }));
    used_g = 0;
  }
  return { entries, files };
}

describe("how good forecasts as issued have been", () => {
  let life: Life;
  let whole: Ledger;
  beforeAll(() => {
    const dice = seeded(7);
    life = live((day) => (28 + 6 * Math.sin(day / 9)) * (0.85 + 0.3 * dice()));
    whole = newLedger();
    whole.add(life.entries);
    for (const [file, text] of life.files) whole.addIssued(file, text);
  });

  it("is said with number, share held and error, in both languages, with a working", () => {
    const good = watering(whole);
    const { score } = good;
    if (!score) throw new Error("no score");
    expect(score.n).toBeGreaterThan(9);
    expect(good.few).toBe(false);
    expect(good.said).toMatch(
      /^\d+ forecasts since .+ Jan: \d+ of \d+ fell in the range \(8 in 10 promised\); off by \d+(\.\d)? d on average, /,
    );
    expect(good.compared).toMatch(/^“As long again as last time” would have been off by /);
    expect(watering(whole, "de").said).toMatch(/^\d+ Vorhersagen seit .* von \d+ fielen in die Spanne/);
    expect(good.working?.sum).toContain(`${score.held_n} / ${score.n}`);
    expect(JSON.stringify(good)).not.toMatch(/NaN|null|Infinity|undefined/);
    // A steady pot, weighed every day: nobody who forecasts at all is days off.
    expect(score.off_d).toBeLessThan(1.5);
    expect(score.crps_d).toBeLessThan(score.off_d + 0.01);
    expect(score.weighed_n).toBe(score.n);
  });

  it("judges none of a pot that nobody weighed or looked at, and says so", () => {
    const [never] = howGood(deskOf(whole), { plant: plantId(2) });
    expect(never).toMatchObject({ few: true, said: expect.stringContaining("Too few to say") });
    expect(never?.score).toBeUndefined();
    expect(never?.unseen_n).toBeGreaterThan(9);
    const bench = howGood(deskOf(whole), { bench: "b" })[0];
    const all = howGood(deskOf(whole), {})[0];
    expect(bench?.score).toEqual(watering(whole).score);
    expect(all?.score).toEqual(bench?.score);
    expect(all?.working?.notes.join(" ")).toContain(
      `${all?.unseen_n} not judged: nothing was weighed or seen`,
    );
    expect(howGood(deskOf(whole), { bench: "elsewhere" })).toEqual([]);
  });

  it("waits for files, and gives the same in the end whatever the order in which entries and files arrive", () => {
    const good = watering(whole);
    const bare = newLedger();
    bare.add(life.entries);
    const missing = issuedMissing(deskOf(bare), { plant: plantId(1) });
    expect(missing.length).toBeGreaterThan(50);
    for (const file of missing) expect(life.files.has(file)).toBe(true);
    expect(issuedMissing(deskOf(bare), { plant: plantId(2) })).toEqual([]);
    const waiting = watering(bare);
    expect(waiting.waiting_n).toBe((good.score?.n ?? 0) + good.unsure_n);
    expect(waiting.waits[0]).toMatch(/wait for their files/);
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const dice = seeded(seed);
        const arrivals = [
          ...life.entries.map((entry) => (ledger: Ledger) => void ledger.add([entry])),
          ...[...life.files].map(
            ([file, text]) =>
              (ledger: Ledger) =>
                ledger.addIssued(file, text),
          ),
        ]
          .map((arrive) => ({ arrive, key: dice() }))
          .sort((a, b) => a.key - b.key);
        const ledger = newLedger();
        for (const { arrive } of arrivals) arrive(ledger);
        expect(watering(ledger)).toEqual(good);
        expect(issuedMissing(deskOf(ledger), {})).toEqual([]);
      }),
      { numRuns: 5 },
    );
  });

  it("reports a file that can't be read and judges by the next one", () => {
    const ledger = newLedger();
    ledger.add(life.entries);
    for (const [file, text] of life.files) ledger.addIssued(file, text.replace("forecasts,1", "forecasts,9"));
    const spoilt = watering(ledger);
    expect(spoilt.score).toBeUndefined();
    expect(spoilt.unreadable_n).toBeGreaterThan(5);
    expect(spoilt.waits.join()).toMatch(/files of kept forecasts can't be read/);
  });

  it("does not hold a forecast to a pour that it had not heard of", () => {
    // The pour of a helper without a line arrives after the day's forecasts were issued: they spoke of the dry-down before.
    const pours = life.entries.filter(({ kind, on }) => kind === "watering.watered" && on[0] === plantId(1));
    const pour = pours[4] as Entry;
    const since = life.entries.filter(({ kind, at_ms }) => kind === "forecast.issued" && at_ms > pour.at_ms);
    const deaf = since[0] as Entry;
    const text = life.files.get(deaf.files?.[0] as string) as string;
    const row = parseForecasts(text).dates.find(({ plant }) => plant === plantId(1));
    const ledger = newLedger();
    ledger.add(life.entries);
    const begin = `dates,${plantId(1)},water,`;
    const from = `${begin}${row?.since_min},`;
    expect(text).toContain(from);
    const spoken = text.replace(from, `${begin}${(row?.since_min ?? 0) - 7 * 1440},`);
    for (const [file, one] of life.files) ledger.addIssued(file, one === text ? spoken : one);
    const issued = (of: Ledger) => {
      const { score } = watering(of);
      return [score?.n, score?.crps_d];
    };
    // The cycle is still judged, by the forecast of the day after.
    expect(issued(ledger)[0]).toBe(issued(whole)[0]);
    expect(issued(ledger)[1]).not.toBe(issued(whole)[1]);
  });

  it("keeps use a day with the dates, and the digest of what it rests on", () => {
    const texts = [...life.files.values()].map((text) => parseForecasts(text));
    expect(new Set(texts.map(({ inputs }) => inputs)).size).toBe(texts.length);
    const { ahead, dates, engine } = texts[30] as (typeof texts)[number];
    expect(engine).toMatch(/^\d+\.\d+$/);
    expect(dates.map(({ work }) => work)).toEqual(["water", "water"]);
    expect(ahead.map(({ name }) => name)).toEqual(["use_g", "use_g"]);
    expect(ahead[0]?.stretches).toHaveLength(8);
    expect(ahead[0]?.stretches[1]?.mean).toBeGreaterThan(15);
    expect(ahead[0]?.stretches[1]?.mean).toBeLessThan(60);
  });
});
