import type {
  BenchLight,
  Energy,
  LampAdvice,
  LightBand,
  LightPage,
  Short,
  SpotLit,
} from "@sillwood/bench/crafts/lighting";
import { iso } from "./instants.ts";

/** The stable shape of the page of light (docs/cli.md): the engine's own objects may change under it. */
export const lightShape = (page: LightPage) => ({
  month: page.month,
  said: page.said,
  benches: page.benches.map(benchShape),
  seats: {
    said: page.seats.said,
    allMoves_n: page.seats.allMoves_n,
    allGain_mol_m2_d: page.seats.allGain_mol_m2_d,
    swaps: page.seats.swaps.map(({ plant, number, from, to, other, gain_mol_m2_d, said, drafts }) => ({
      plant,
      number,
      from,
      to,
      other: other ?? null,
      gain_mol_m2_d,
      said,
      drafts: drafts.map(({ kind, on, data }) => ({ kind, on, data })),
    })),
  },
  figures: page.figures,
});

const band = ({ mid_mol_m2_d, dull_mol_m2_d, sunny_mol_m2_d }: LightBand) => ({
  mid_mol_m2_d,
  dull_mol_m2_d,
  sunny_mol_m2_d,
});

const benchShape = (bench: BenchLight) => ({
  bench: bench.bench,
  name: bench.name,
  outdoors: bench.outdoors,
  quarantine: bench.quarantine,
  said: bench.said,
  windowSaid: bench.windowSaid,
  windows: bench.windows.map(
    ({ window_n, faces_deg, width_m, height_m, sill_m, opposite_deg, recess_m, glazing, veil, origin }) => ({
      window_n,
      faces_deg,
      width_m,
      height_m,
      sill_m,
      opposite_deg,
      recess_m,
      glazing,
      veil,
      origin,
    }),
  ),
  lamps: bench.lamps.map(({ lamp_n, form, source, above_m, along_m, fromGlass_m, power_W, origin }) => ({
    lamp_n,
    form,
    source,
    above_m,
    along_m,
    fromGlass_m,
    power_W,
    origin,
  })),
  timer: bench.timer
    ? {
        from_h: bench.timer.from_h,
        hours_h: bench.timer.hours_h,
        origin: bench.timer.origin,
        outSince: bench.timer.outSince_ms === undefined ? null : iso(bench.timer.outSince_ms),
      }
    : null,
  advice: bench.advice ? adviceShape(bench.advice) : null,
  energy: bench.energy ? energyShape(bench.energy) : null,
  worth: bench.worth
    ? {
        spot: bench.worth.spot,
        kind: bench.worth.kind,
        said: bench.worth.said,
        sdNow_frac: bench.worth.sdNow_frac,
        sdThen_frac: bench.worth.sdThen_frac,
      }
    : null,
  unsure: bench.unsure
    ? {
        said: bench.unsure.said,
        ask: bench.unsure.ask,
        cases: bench.unsure.cases.map((one) => ({
          faces_deg: one.faces_deg,
          ...band(one),
          noon_lux: one.noon_lux,
        })),
      }
    : null,
  spots: bench.spots.map(spotShape),
  read: bench.read.map(({ entry, at_ms, said }) => ({ entry, at: iso(at_ms), said })),
});

const spotShape = (spot: SpotLit) => ({
  spot: spot.spot,
  name: spot.name,
  along_m: spot.along_m,
  fromGlass_m: spot.fromGlass_m,
  placeOrigin: spot.placeOrigin,
  plant: spot.plant ?? null,
  number: spot.number ?? null,
  kind: spot.kind ?? null,
  state: spot.state,
  said: spot.said,
  light: {
    ...band(spot.light),
    low_mol_m2_d: spot.light.low_mol_m2_d,
    high_mol_m2_d: spot.light.high_mol_m2_d,
    window_mol_m2_d: spot.light.window_mol_m2_d,
    lamp_mol_m2_d: spot.light.lamp_mol_m2_d,
    sky_mol_m2_d: spot.light.sky_mol_m2_d,
    origin: spot.light.origin,
    from: spot.light.from,
  },
  need: spot.need
    ? {
        min_mol_m2_d: spot.need.min_mol_m2_d,
        aim_mol_m2_d: spot.need.aim_mol_m2_d,
        max_mol_m2_d: spot.need.max_mol_m2_d,
        stageSaid: spot.need.stageSaid,
        origin: spot.need.origin,
      }
    : null,
  short: spot.short ? shortShape(spot.short) : null,
  turnSaid: spot.turnSaid ?? null,
  debtSaid: spot.debtSaid ?? null,
  year: spot.year.map((month) => ({
    month: month.month,
    ...band(month),
    need_mol_m2_d: month.need_mol_m2_d ?? null,
  })),
});

const dates = (one: Short["from"]) => (one ? { date: one.date, low: one.low, high: one.high } : null);

const shortShape = ({ state, said, from, until, lamp_h, before, origin }: Short) => ({
  state,
  said,
  from: dates(from),
  until: dates(until),
  lamp_h: lamp_h ?? null,
  before: before
    ? { entry: before.entry, from: dates(before.from), until: dates(before.until), said: before.said }
    : null,
  origin,
});

const energyShape = (energy: Energy) => ({
  power_W: energy.power_W,
  kWh_d: energy.kWh_d,
  kWh_month: energy.kWh_month,
  plants_n: energy.plants_n,
  cost_minor_d: energy.cost_minor_d ?? null,
  cost_minor_month: energy.cost_minor_month ?? null,
  costPerPlant_minor_month: energy.costPerPlant_minor_month ?? null,
  currency: energy.currency,
  said: energy.said,
});

const adviceShape = (advice: LampAdvice) => ({
  from_h: advice.from_h,
  hours_h: advice.hours_h,
  said: advice.said,
  change: advice.change,
  waitSaid: advice.waitSaid ?? null,
  draft: { kind: advice.draft.kind, on: advice.draft.on, data: advice.draft.data },
  target_mol_m2_d: advice.target_mol_m2_d,
  natural_mol_m2_d: advice.natural_mol_m2_d,
  ppfd_umol_m2_s: advice.ppfd_umol_m2_s,
  cap_h: advice.cap_h,
  short_mol_m2_d: advice.short_mol_m2_d,
  shortSaid: advice.shortSaid ?? null,
  wanted_umol_m2_s: advice.wanted_umol_m2_s ?? null,
  energy: energyShape(advice.energy),
});
