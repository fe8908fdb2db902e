import type { Chance } from "../nursery/chance.ts";

/**
 * All that a run draws, with its range. Each is as wide as growers, houses and plants are, which is wider than a reckoner
 * would take for granted: what it must find out is not what it was told. All are our assumption unless a source is named;
 * what drives the choice stands beside each. `[low, high]` is drawn evenly, `{ middle, sd }` normally, `{ median, sdOfLog }`
 * as a factor. What fills pots and how leaves behave has its ranges in `nursery/draw-plant.ts`.
 *
 * | group | a reckoner takes | we draw | why |
 * |---|---|---|---|
 * | store of a pot | pot and medium's usual, sd a quarter | medium ranges of draw-plant.ts, × log-sd 0.12, one in twelve misnamed, ageing | mixes of one name differ twofold; labels are lost |
 * | a day's use | sd a quarter, wandering 6 % a day | own noise 8 to 35 %, bench noise 4 to 18 %, heavy tails, memory, and a swing over weeks of 5 to 35 % | draughts, doors, visitors, health |
 * | growth | a hundredth of a gram a gram | leaf area from shrinking to threefold, flushes after cuts, fruit picked, wood | species, season and age differ |
 * | eye | a tenth of the store, one bias a person | scatter to 18 %, bias ± 12 % a person and ± 8 % a pot, their own words | nobody calibrates hands |
 * | scale | its step | gain ± 0.4 %, zero that drifts, forgotten tare, turned digits, wrong pot 0.2 to 3 % | kitchen scales, wet hands |
 * | window | compass and month | pane, distance, street, brow, glass, curtains, by rays | half a metre back is half the light |
 * | air | what was read, else a usual room | heating by the clock, cold panes, radiators, unheated summers | rooms are lived in |
 * | people | who looks is right on average | by feel, by days, by weekdays; absences; lost notes; notes from memory | so people are |
 */
export const RANGES = {
  place: {
    /** Days after 1 January of the record's first year: any season. */
    startsAfter_d: [0, 900],
    latitude_deg: [36, 56],
    elevation_m: [0, 900],
    /** Against the record: other climates of the temperate zone. */
    warmer_C: { middle: 0, sd: 4.5 },
    /** Daily range of temperature over the record's: maritime to continental. */
    swing_frac: [0.85, 1.5],
    rain_frac: [0.2, 1.2],
  },
  /** Peppers are given the lighter windows of a house, and the spots at the glass before those behind. */
  window: {
    /** Compass of the wall; the grower writes it to the nearest eighth of the circle, and may be one off. */
    facesOff_deg: { middle: 0, sd: 14 },
    width_m: [0.6, 2.4],
    height_m: [0.8, 2.2],
    /** Lower edge of the glass over the crowns: sills below the crowns, tables well above or below. */
    foot_m: [-0.5, 0.1],
    reveal_m: [0.03, 0.32],
    /** Extinction in one pane: white to green float glass. */
    extinction: [0.008, 0.06],
    /** Bars, dirt, coating, insect screen; with a net curtain less. */
    clear_frac: [0.65, 0.95],
    curtain_frac: [0.45, 0.8],
    heat_frac: [0.5, 0.95],
    roofs_deg: [0, 25],
    sideHeight_deg: [20, 60],
    brow_deg: [45, 90],
    ground_frac: [0.1, 0.35],
    walls_frac: [0.1, 0.6],
    firstRow_m: [0.05, 0.3],
    rowApart_m: [0.12, 0.3],
    /** Half the length of the bench over half the width of the pane: ends may stand behind the wall. */
    spread_frac: [0.5, 1.15],
    surfaces_m2: [35, 120],
    reflectance_frac: [0.25, 0.65],
    /** How far outer leaves turn to the pane. */
    turned_frac: [0.15, 0.5],
  },
  lamp: {
    power_W: [25, 150],
    /** Photons per joule of the fitting, old strips to good diodes. */
    efficacy_umol_J: [1.2, 2.7],
    /** Share of the photons that reaches the shelf. */
    lands_frac: [0.45, 0.85],
    area_m2: [0.3, 0.7],
    /** What growers leave on a shelf that plants live under. */
    ppfd_umol_m2_s: [55, 450],
    hangs_m: [0.22, 0.6],
    thrownBack_frac: [0.1, 0.5],
    fades_frac_y: [0, 0.1],
    on_h: [4, 11],
    burns_h: [9, 18],
    slipsPerDay: [0, 0.012],
    stray_frac: [0, 0.012],
    length_m: [0.7, 1.3],
  },
  room: {
    day_C: [15, 24],
    night_C: [10, 20],
    wakes_h: [5, 8.5],
    sleeps_h: [20.5, 24],
    outAtWork_C: [0, 4],
    heatsBelow_C: [9, 17],
    gains_C: [1, 5],
    slow_h: [4, 70],
    leaks_frac: [0.1, 0.9],
    chill_frac: [0, 0.28],
    radiator_C: [0, 4],
    moisture_kPa: [0.02, 0.7],
    airs_per_h: [0.1, 1.2],
    wind_m_s: [0.02, 0.3],
    fan_m_s: [0.1, 0.9],
    lampWarmth_C: [0.2, 3],
  },
  person: {
    dryAt_frac: { middle: 0.57, sd: 0.14 },
    dryAtLimits_frac: [0.22, 0.92],
    goesBySurface_frac: [0, 0.6],
    wobble_frac: [0.03, 0.18],
    /** Of one pot, always the same way. */
    misfelt_frac: { middle: 0, sd: 0.08 },
    eyeBias_frac: { middle: 0, sd: 0.12 },
    eyeScatter_frac: [0.04, 0.18],
    wetTo_frac: [0.06, 0.3],
    moistOver_frac: [0.15, 0.4],
    hand_frac: { median: 1, sdOfLog: 0.1 },
    everyDays_d: [2, 11],
    sparesWet_frac: [0, 0.9],
    saysDrained_frac: [0.1, 1],
    emptiesSaucer_frac: [0, 1],
    turnsDigits_frac: [0, 0.006],
    wrongPot_frac: [0.002, 0.03],
  },
  scale: {
    gain_frac: { middle: 1, sd: 0.004 },
    driftPerDay_g: [0, 0.5],
    tareSlipPerDay: [0, 0.02],
    tareSlip_g: [15, 180],
  },
  pot: {
    /** Of what its medium was thought to hold, by how hard it was pressed in. */
    pressed_frac: { median: 1, sdOfLog: 0.12 },
    /** Crown between its neighbours over what the spot gets. */
    light_frac: [0.55, 1.1],
    whims_frac: [0.08, 0.35],
    /** Swing over weeks and its memory from day to day. */
    swing_frac: [0.05, 0.35],
    swingMemory: [0.9, 0.985],
    usual_frac: [0.35, 1.05],
  },
  plant: {
    growth_frac_d: { middle: 0.018, sd: 0.014 },
    most_frac: [1.05, 3],
    base_C: [6, 13],
    regrows_frac: [0.4, 1.2],
    breaks_Cd: [60, 240],
    flush_d: [14, 45],
    keepsAt_mol_m2_d: [0.3, 2],
    falls_frac_d: [0.002, 0.014],
  },
  filling: {
    slumps_frac_y: [-0.1, 0.3],
    tightens_frac_y: [0, 0.5],
    rootsNow_frac: [0.02, 0.3],
    rootsMore_frac: [0.02, 0.16],
    rootsPace_per_d: [0.001, 0.015],
    repels_frac_y: [0, 0.6],
    salt_g_L: [0, 0.3],
  },
  /** Mean days between such events on one pot. */
  event: {
    trim_d: 95,
    trimmed_frac: [0.06, 0.5],
    sip_d: 90,
    sip_mL: [15, 110],
    shift_d: 55,
    bench_d: 110,
    lightened_d: 120,
    lightened_g: [3, 40],
    dressed_d: 240,
    dressed_g: [4, 55],
    rot_d: 900,
    rootsLeft_frac: [0.35, 0.9],
  },
} as const;

type Even = readonly [number, number];
type Normal = { readonly middle: number; readonly sd: number };
type Factor = { readonly median: number; readonly sdOfLog: number };

/** Draws one of the above. */
export function drawn(chance: Chance, range: Even | Normal | Factor): number {
  if ("middle" in range) return chance.normal(range.middle, range.sd);
  if ("median" in range) return chance.logNormal(range.median, range.sdOfLog);
  return chance.between(range[0], range[1]);
}
