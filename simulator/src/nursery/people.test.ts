import { describe, expect, test } from "vitest";
import { drawRun } from "../skill/draw-run.ts";
import { DAY_ms } from "./calendar.ts";
import { chanceOf } from "./chance.ts";
import type { Note } from "./notes.ts";
import type { Person } from "./people.ts";
import { copyOf, potAvailable_g, weight_g } from "./potted-plant.ts";
import { readScale, type Tended, tend } from "./tend.ts";

const drawn = drawRun(1, 3, 30, 40, chanceOf("people"));
const plain: Person = {
  key: "grower",
  dryAt_frac: 0.6,
  goesBySurface_frac: 0,
  wobble_frac: 0,
  pours: "jug",
  hand_frac: 1,
  writesWalk_frac: 1,
  writesLook_frac: 4,
  saysDrained_frac: 1,
  emptiesSaucer_frac: 0,
  forgets_frac: 0,
  scaleStep_g: 1,
  wrongPot_frac: 0,
};

/** A pot brought down to a share of its store. */
function potAt(gone_frac: number): Tended {
  const tended = drawn.tended[0] as Tended;
  const pot = copyOf(tended.pot);
  const { surfaceFull_g, rootFull_g } = pot.vessel.medium;
  const gone_g = potAvailable_g(pot) * gone_frac;
  pot.surface_g = surfaceFull_g - gone_g * 0.2;
  pot.root_g = rootFull_g - gone_g * 0.8;
  return {
    ...tended,
    pot,
    weighings_n: 0,
    weighAt_ms: [],
    misfelt_frac: 0,
    watered_ms: pot.at_ms - 3 * DAY_ms,
  };
}

function notesOf(person: Person, gone_frac: number, times_n = 1): Note[] {
  const notes: Note[] = [];
  for (let i = 0; i < times_n; i++) {
    const tended = potAt(gone_frac);
    tend(tended, undefined, person, tended.pot.at_ms, chanceOf(`${gone_frac} ${i}`), notes);
  }
  return notes;
}
const waters = (person: Person, gone_frac: number) =>
  notesOf(person, gone_frac).some(({ what }) => what === "watered");

describe("people", () => {
  test("who look water at their own dryness, whatever day it is", () => {
    expect(waters(plain, 0.5)).toBe(false);
    expect(waters(plain, 0.7)).toBe(true);
  });

  test("who go by days water a wet pot on the day and a dry one not before, but spare what is plainly wet if they look", () => {
    expect(waters({ ...plain, habit_d: 3 }, 0.2)).toBe(true);
    expect(waters({ ...plain, habit_d: 7 }, 0.7)).toBe(false);
    expect(waters({ ...plain, watersToday: true }, 0.2)).toBe(true);
    expect(waters({ ...plain, watersToday: false }, 0.7)).toBe(false);
    expect(waters({ ...plain, watersToday: true, sparesWet_frac: 1 }, 0.05)).toBe(false);
  });

  test("call one pot by different words", () => {
    const eye = { bias_frac: 0, scatter_frac: 0.02, wetTo_frac: 0.15, moistTo_frac: 0.4 };
    const said = (person: Person) =>
      new Set(
        notesOf(person, 0.3, 40).map((note) => (note.what === "looked" ? `${note.look} ${note.yes}` : "")),
      );
    expect(said({ ...plain, eye: { ...eye, wetTo_frac: 0.4 } })).toEqual(new Set(["wet true"]));
    expect(said({ ...plain, eye }).has("moist true")).toBe(true);
    const gloomy = { ...eye, bias_frac: 0.3 };
    expect(said({ ...plain, eye: gloomy }).has("moist true")).toBe(false);
  });
});

describe("a kitchen scale", () => {
  const { pot } = potAt(0.4);
  const scale = { gain_frac: 1.01, from_ms: pot.at_ms - DAY_ms, zero_g: Float64Array.of(0, -120) };
  const mean = (person: Person) =>
    Array.from({ length: 300 }, (_, i) =>
      readScale(pot, undefined, person, "as found", chanceOf(`scale ${i}`)),
    ).reduce((total, weight) => total + weight, 0) / 300;

  test("is off by its gain and by the zero of the day", () => {
    const shown = mean({ ...plain, scale }) - mean(plain);
    expect(shown).toBeCloseTo(weight_g(pot) * 0.01 - 120, 0);
  });

  test("shows steps, and a hand may turn two digits round", () => {
    const read = (person: Person, i: number) =>
      readScale(pot, undefined, person, "as found", chanceOf(`step ${i}`));
    for (let i = 0; i < 20; i++) expect(read({ ...plain, scaleStep_g: 10 }, i) % 10).toBe(0);
    const turned = Array.from({ length: 20 }, (_, i) => [
      read(plain, i),
      read({ ...plain, turnsDigits_frac: 1 }, i),
    ]);
    const digits = (value: number | undefined) => [...String(value)].sort().join("");
    for (const [right, wrong] of turned) expect(Number(digits(wrong))).toBe(Number(digits(right)));
    expect(turned.some(([right, wrong]) => right !== wrong)).toBe(true);
  });

  test("a weight may be that of the neighbour", () => {
    const other = copyOf(pot);
    other.fresh_g += 500;
    const read_g = readScale(pot, other, { ...plain, wrongPot_frac: 1 }, "as found", chanceOf("wrong"));
    expect(read_g - weight_g(pot)).toBeGreaterThan(450);
  });
});
