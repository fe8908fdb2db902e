import * as v from "valibot";
import { expect, it } from "vitest";
import { shell } from "./shell.ts";

/** The shape of `light --json` that docs/cli.md promises, field by field. */
const finite = v.pipe(v.number(), v.finite());
const origin = v.picklist(["measured", "learned", "assumed"]);
const maybe = <Schema extends v.GenericSchema>(schema: Schema) => v.nullable(schema);
const band = { mid_mol_m2_d: finite, dull_mol_m2_d: finite, sunny_mol_m2_d: finite };
const dates = maybe(v.strictObject({ date: v.string(), low: v.string(), high: v.string() }));
const draft = v.strictObject({ kind: v.string(), on: v.array(v.string()), data: v.unknown() });
const energy = v.strictObject({
  power_W: finite,
  kWh_d: finite,
  kWh_month: finite,
  plants_n: finite,
  cost_minor_d: maybe(finite),
  cost_minor_month: maybe(finite),
  costPerPlant_minor_month: maybe(finite),
  currency: v.string(),
  said: v.string(),
});
const spot = v.strictObject({
  spot: v.string(),
  name: v.string(),
  along_m: finite,
  fromGlass_m: finite,
  placeOrigin: origin,
  plant: maybe(v.string()),
  number: maybe(v.string()),
  kind: maybe(v.string()),
  state: v.picklist(["short", "enough", "bright", "free"]),
  said: v.string(),
  light: v.strictObject({
    ...band,
    low_mol_m2_d: finite,
    high_mol_m2_d: finite,
    window_mol_m2_d: finite,
    lamp_mol_m2_d: finite,
    sky_mol_m2_d: finite,
    origin,
    from: v.string(),
  }),
  need: maybe(
    v.strictObject({
      min_mol_m2_d: finite,
      aim_mol_m2_d: finite,
      max_mol_m2_d: finite,
      stageSaid: v.string(),
      origin,
    }),
  ),
  short: maybe(
    v.strictObject({
      state: v.picklist(["short now", "short later", "short always", "never short"]),
      said: v.string(),
      from: dates,
      until: dates,
      lamp_h: maybe(finite),
      before: maybe(v.strictObject({ entry: v.string(), from: dates, until: dates, said: v.string() })),
      origin,
    }),
  ),
  turnSaid: maybe(v.string()),
  debtSaid: maybe(v.string()),
  year: v.pipe(
    v.array(v.strictObject({ month: finite, ...band, need_mol_m2_d: maybe(finite) })),
    v.length(12),
  ),
});
const page = v.looseObject({
  sillwood: v.literal(1),
  verb: v.literal("light"),
  now: v.pipe(v.string(), v.isoTimestamp()),
  month: finite,
  said: v.string(),
  benches: v.array(
    v.strictObject({
      bench: v.string(),
      name: v.string(),
      outdoors: v.boolean(),
      quarantine: v.boolean(),
      said: v.string(),
      windowSaid: v.string(),
      windows: v.array(v.looseObject({ window_n: finite, faces_deg: finite, origin })),
      lamps: v.array(v.looseObject({ lamp_n: finite, power_W: finite, origin })),
      timer: maybe(v.strictObject({ from_h: finite, hours_h: finite, origin, outSince: maybe(v.string()) })),
      advice: maybe(
        v.looseObject({
          from_h: finite,
          hours_h: finite,
          said: v.string(),
          change: v.boolean(),
          draft,
          energy,
        }),
      ),
      energy: maybe(energy),
      worth: maybe(v.looseObject({ spot: v.string(), kind: v.string(), said: v.string() })),
      unsure: maybe(
        v.looseObject({ said: v.string(), ask: v.string(), cases: v.array(v.looseObject(band)) }),
      ),
      spots: v.array(spot),
      read: v.array(v.strictObject({ entry: v.string(), at: v.string(), said: v.string() })),
    }),
  ),
  seats: v.strictObject({
    said: v.string(),
    allMoves_n: finite,
    allGain_mol_m2_d: finite,
    swaps: v.array(
      v.looseObject({ plant: v.string(), from: v.string(), to: v.string(), drafts: v.array(draft) }),
    ),
  }),
  figures: v.record(v.string(), v.union([finite, v.string()])),
});

it("light --json has the shape of the documents: window, lamp with timer and price, a reading, a direction nobody knows", async () => {
  const sh = shell();
  await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "window=S");
  await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "bench=Lamp shelf");
  await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "bench=Some sill");
  await sh.run(
    ..."enter bench.lamp lamp-shelf form=strip source=white-LED length=1.1 width=0.06 power=36 above=0.3".split(
      " ",
    ),
  );
  await sh.run(..."enter bench.timer lamp-shelf from=6:00 hours=14".split(" "));
  await sh.run(..."enter supply.tariff price=30".split(" "));
  await sh.run(
    ..."enter light.pair south-window-1 inside_lux=900 outside_lux=9000 sky=evenly-grey".split(" "),
  );
  const { out, err } = await sh.run("light", "--json");
  expect(err).toBe("");
  const answer = v.parse(page, JSON.parse(out));
  const bench = (name: string) => answer.benches.find((one) => one.name === name);
  expect(bench("South window")?.read).toHaveLength(1);
  expect(bench("South window")?.spots[0]?.light.origin).toBe("measured");
  expect(bench("Lamp shelf")?.energy?.cost_minor_d).toBeGreaterThan(0);
  expect(bench("Lamp shelf")?.advice?.draft.kind).toBe("bench.timer");
  expect(bench("Some sill")?.unsure?.cases.length).toBeGreaterThan(1);
});
