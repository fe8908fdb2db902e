import { writeFileSync } from "node:fs";
import { join } from "node:path";
import * as v from "valibot";
import { beforeAll, describe, expect, it } from "vitest";
import { shell } from "./shell.ts";

/** The shapes that docs/cli.md promises, field by field: one that goes away or changes its type fails here. */
const instant = v.pipe(v.string(), v.isoTimestamp());
const date = v.pipe(v.string(), v.isoDate());
const maybe = <Schema extends v.GenericSchema>(schema: Schema) => v.nullable(schema);
const finite = v.pipe(v.number(), v.finite());
const origin = v.picklist(["measured", "learned", "assumed"]);
const head = (verb: string) => ({ sillwood: v.literal(1), verb: v.literal(verb) });
const asked = {
  now: instant,
  known: maybe(instant),
  zone: v.string(),
  language: v.picklist(["en", "de"]),
  units: v.picklist(["metric", "us"]),
};
const dated = v.strictObject({ instant, date });
const quantiles = v.strictObject({ p10: dated, p25: dated, p50: dated, p75: dated, p90: dated });
const draft = v.looseObject({ kind: v.string(), data: v.unknown() });
const task = v.looseObject({
  id: v.string(),
  craft: v.string(),
  work: v.string(),
  plant: v.string(),
  title: v.string(),
  said: v.string(),
  why: v.string(),
  must: v.boolean(),
  minutes: finite,
  amount: maybe(v.strictObject({ value: finite, unit: v.string() })),
  earliest: instant,
  best: instant,
  latest: instant,
  dates: v.array(instant),
  quantiles: maybe(quantiles),
  act: draft,
});
const held = v.looseObject({ work: v.string(), by: v.string(), why: v.string(), firm: v.boolean() });
const figures = v.record(v.string(), v.union([finite, v.array(finite), v.string()]));
const working = v.looseObject({
  title: v.string(),
  result: v.string(),
  unit: v.string(),
  origin,
  formula: v.string(),
  sum: v.string(),
  inputs: v.array(
    v.looseObject({ name: v.string(), said: v.string(), unit: v.string(), origin, from: v.string() }),
  ),
  source: v.string(),
  notes: v.array(v.string()),
});
const entry = v.strictObject({
  id: v.string(),
  kind: v.string(),
  on: v.array(v.string()),
  at: instant,
  data: v.unknown(),
  files: v.array(v.string()),
  said: maybe(v.string()),
});
const problem = v.looseObject({ path: v.string(), message: v.string() });

const shapes: Readonly<Record<string, v.GenericSchema>> = {
  round: v.strictObject({
    ...head("round"),
    ...asked,
    date,
    said: v.string(),
    tasks_n: finite,
    minutes: finite,
    must_n: finite,
    overSaid: maybe(v.string()),
    fits_n: finite,
    wait_n: finite,
    benches: v.array(
      v.strictObject({
        bench: v.string(),
        name: v.string(),
        outdoors: v.boolean(),
        quarantine: v.boolean(),
        said: v.string(),
        count_n: finite,
        weatherSaid: maybe(v.string()),
        minutes: finite,
        spots: v.array(
          v.strictObject({
            spot: v.string(),
            name: v.string(),
            plant: maybe(v.string()),
            number: maybe(v.string()),
            kind: maybe(v.string()),
            tasks: v.array(task),
            held: v.array(held),
            moved: v.array(task),
          }),
        ),
      }),
    ),
    held: v.array(held),
    questions: v.array(
      v.looseObject({ plant: v.string(), number: v.string(), said: v.string(), worth_d: finite }),
    ),
    asks: v.array(v.looseObject({ said: v.string(), plants: v.array(v.string()) })),
    beforeYouGo: v.array(v.string()),
    next: maybe(v.looseObject({ date, said: v.string(), low_n: finite, mid_n: finite, high_n: finite })),
  }),
  show: v.looseObject({
    ...head("show"),
    ...asked,
    plant: v.string(),
    number: v.string(),
    kind: v.string(),
    placeSaid: maybe(v.string()),
    weatherSaid: maybe(v.string()),
    spot: maybe(v.looseObject({ id: v.string(), name: v.string(), bench: v.string() })),
    ended: maybe(v.string()),
    facts: v.array(v.looseObject({ name: v.string(), said: v.string(), origin, from: v.string() })),
    forecast: v.record(
      v.string(),
      v.strictObject({
        said: maybe(v.string()),
        origin: maybe(origin),
        dates: v.array(instant),
        quantiles: maybe(quantiles),
        work: maybe(v.string()),
        since: maybe(instant),
        byDay: v.record(
          v.string(),
          v.array(
            v.strictObject({
              date,
              from: instant,
              to: instant,
              mean: finite,
              sd: finite,
              p10: finite,
              p90: finite,
            }),
          ),
        ),
        figures,
      }),
    ),
    howGood: v.array(
      v.strictObject({
        work: v.string(),
        said: v.string(),
        few: v.boolean(),
        n: finite,
        from: maybe(instant),
        to: maybe(instant),
        held_n: finite,
        held_frac: maybe(finite),
        crps_d: maybe(finite),
        off_d: maybe(finite),
        late_d: maybe(finite),
        range_d: maybe(finite),
        truthSd_d: maybe(finite),
        weighed_n: finite,
        sameAgain: maybe(
          v.strictObject({
            n: finite,
            crps_d: finite,
            late_d: finite,
            oursCrps_d: finite,
            oursOff_d: finite,
          }),
        ),
        waiting_n: finite,
        unseen_n: finite,
        unsure_n: finite,
        unforecast_n: finite,
        unreadable_n: finite,
      }),
    ),
    states: v.array(
      v.looseObject({ craft: v.string(), name: v.string(), said: v.string(), value: finite, origin }),
    ),
    tasks: v.array(task),
    held: v.array(held),
    problems: v.array(v.string()),
    workings: v.array(working),
  }),
  enter: v.strictObject({
    ...head("enter"),
    written: v.boolean(),
    entries: v.array(entry),
    plants: v.array(
      v.strictObject({
        plant: v.string(),
        number: v.string(),
        next: v.array(v.strictObject({ craft: v.string(), said: v.string(), origin })),
        tasks: v.array(task),
      }),
    ),
  }),
  log: v.strictObject({
    ...head("book"),
    ...asked,
    lines: v.array(
      v.looseObject({
        id: v.string(),
        kind: v.string(),
        at: instant,
        on: v.array(v.string()),
        said: maybe(v.string()),
        by: v.string(),
        state: v.picklist(["in force", "withdrawn", "newer", "redacted", "request"]),
        ruledThrough: v.array(v.strictObject({ said: v.string(), by: v.string(), at: instant })),
        data: v.unknown(),
        files: v.array(v.string()),
      }),
    ),
  }),
  read: v.strictObject({
    ...head("read"),
    kept: v.boolean(),
    rows_n: finite,
    entries_n: finite,
    mapping: v.record(v.string(), v.string()),
    unmapped: v.array(v.string()),
    firstRows: v.array(v.string()),
    problems: v.array(problem),
    notes: v.array(v.string()),
  }),
  away: v.strictObject({
    ...head("away"),
    ...asked,
    from: instant,
    to: instant,
    plans: v.array(
      v.looseObject({
        craft: v.string(),
        said: v.string(),
        plants: v.array(
          v.looseObject({ plant: v.string(), number: v.string(), wants_frac: finite, suffers_frac: finite }),
        ),
        sitter: v.array(v.looseObject({ plant: v.string(), at: instant, said: v.string() })),
        back: v.array(v.looseObject({ plant: v.string(), said: v.string() })),
      }),
    ),
  }),
  sum: v.strictObject({
    ...head("reckon"),
    name: v.string(),
    inputs: v.record(v.string(), v.unknown()),
    usual: v.array(v.string()),
    result: v.record(v.string(), v.unknown()),
    source: v.string(),
  }),
  formulas: v.strictObject({
    ...head("reckon"),
    functions: v.array(
      v.looseObject({
        name: v.string(),
        field: v.string(),
        what: v.string(),
        inputs: v.array(
          v.looseObject({
            name: v.string(),
            unit: v.string(),
            min: maybe(finite),
            max: maybe(finite),
            optional: v.boolean(),
          }),
        ),
        source: v.string(),
      }),
    ),
  }),
  problems: v.strictObject({
    sillwood: v.literal(1),
    verb: maybe(v.string()),
    problems: v.pipe(v.array(problem), v.minLength(1)),
  }),
};

describe("the shapes of --json", () => {
  const sh = shell();
  beforeAll(async () => {
    await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "medium=spongy", "window=S");
    await sh.run("enter", "watering.weighed", "1", "weight=612");
    writeFileSync(join(sh.home, "scale.csv"), "time,grams\n2026-03-11 08:00,598\n");
  });

  it.each([
    ["round", ["round"]],
    ["show", ["show", "1"]],
    ["enter", ["enter", "watering.looked", "1", "look=heavy"]],
    ["log", ["book", "log"]],
    ["read", ["read", "weighings", "scale.csv", "--plant", "1"]],
    ["read", ["read", "weighings", "scale.csv", "--plant", "1", "--keep"]],
    ["away", ["away", "2026-03-13", "2026-03-20"]],
    ["sum", ["reckon", "saturationVapourPressure_kPa", "air=70F"]],
    ["formulas", ["reckon"]],
    ["problems", ["show", "999"]],
    ["problems", ["enter", "watering.weighed", "1", "weight=-4"]],
    ["problems", ["rond"]],
    ["problems", ["round", "--minutes", "x"]],
  ])("%s: %j", async (shape, argv) => {
    const { out } = await sh.run(...argv, "--json");
    expect(out.endsWith("\n")).toBe(true);
    expect(out.trimEnd()).not.toContain("\n");
    const { issues } = v.safeParse(shapes[shape] as v.GenericSchema, JSON.parse(out));
    expect(issues?.map((issue) => `${v.getDotPath(issue)}: ${issue.message}`) ?? []).toEqual([]);
  });

  it("names field, value, limit and unit of a problem, and the likely slip", async () => {
    const { json, code } = await sh.run("enter", "watering.watered", "1", "volume=90000mL", "--json");
    expect(code).toBe(1);
    expect((json()["problems"] as unknown as object[])[0]).toMatchObject({
      path: "data.volume_mL",
      value: 90_000,
      limit: "1 to 20000 mL",
      unit: "mL",
      slip: "Meant 9000 mL?",
    });
  });
});
