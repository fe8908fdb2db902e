import { addDays } from "../../places/time.ts";
import { once } from "../../working/once.ts";
import type { Outlook, Outward, Question } from "../craft.ts";
import { needOf } from "./need.ts";
import { asymmetry_frac, type LightSlice } from "./slice.ts";
import { type BenchTurn, turnDue, turnTask } from "./turn.ts";
import { lightingWords } from "./words.ts";
import { lightSaid, needWorking, weekWorking, Z80 } from "./workings.ts";

/** What light says of a plant now. */
export function lightOutlook(slice: LightSlice, sight: Outward): Outlook {
  const { say } = sight;
  const words = lightingWords(say);
  const need = needOf(sight);
  const day = sight.airAt(sight.plant.spot, sight.dateOf(sight.now_ms));
  const due = turnDue(slice, sight);
  const task = due && !due.isQuiet ? turnTask(due, slice, sight) : undefined;
  const question = readQuestion(slice, need.min_mol_m2_d, sight);
  // A round asks for tasks and questions alone: the rest is written for the page of one plant.
  const week = once(() => weekWorking(slice, need, day, sight));
  return {
    tasks: task ? [task] : [],
    get head() {
      const working = week();
      return {
        name: words.head,
        said: working.result,
        value: slice.week_mol_m2_d,
        unit: working.unit,
        working,
      };
    },
    ...(question ? { question } : {}),
    get workings() {
      return [week(), needWorking(need, say), ...(task ? [task.working] : [])];
    },
    problems: slice.problems.map(({ entry }) => ({ entry, message: words.cannotRead })),
    get figures() {
      return {
        light_mol_m2_d: slice.week_mol_m2_d,
        lightNeeded_mol_m2_d: need.min_mol_m2_d,
        lightAim_mol_m2_d: need.aim_mol_m2_d,
        lightMost_mol_m2_d: need.max_mol_m2_d,
        lightSd_frac: slice.lightSd_frac,
        lightCaught_mol_d: slice.around_mol_m2_d * slice.catching_m2,
        debt_mol_m2: slice.debt_mol_m2,
        turned_deg: slice.turned_deg,
        sinceTurn_d: (sight.now_ms - slice.turnedAt_ms) / 86_400_000,
        oneSided_frac: slice.side_frac,
        asymmetry_frac: asymmetry_frac(slice),
        dayLength_h: day.daylight.dayLength_h,
        ...(due ? { turnDue_ms: due.due_ms } : {}),
      };
    },
  };
}

/** Relative sd that a pair of readings leaves. @source sun-light sheet section 11: it halves the part of the model */
const AFTER_PAIR_SD_frac = 0.12;
const PAIR_s = 120;
const SEASON_STEP_d = 20;
/** Dates of light are months off, those of water days: a question of light ranks below a pot that may be dry. @source our assumption */
const MOST_WORTH_d = 1.5;
const LEAST_NARROWER_d = 7;

/**
 * One pair of readings for the whole bench, asked at one of its pots: only where the need lies within what the light may be,
 * so that it decides about a lamp or a place, and only until somebody has read.
 */
function readQuestion(slice: LightSlice, need_mol_m2_d: number, sight: Outward): Question | undefined {
  const bench = sight.pooled as BenchTurn | undefined;
  if (bench?.readAt !== sight.plant.id || slice.lightOrigin === "measured") return undefined;
  const { dli_mol_m2_d, daylight, outdoors } = sight.airAt(sight.plant.spot, sight.dateOf(sight.now_ms));
  const { sd_frac, window_mol_m2_d } = daylight;
  if (outdoors || window_mol_m2_d < dli_mol_m2_d / 2 || sd_frac <= 1.5 * AFTER_PAIR_SD_frac) return undefined;
  const low = dli_mol_m2_d * Math.exp(-Z80 * sd_frac);
  const high = dli_mol_m2_d * Math.exp(Z80 * sd_frac);
  if (need_mol_m2_d < low || need_mol_m2_d > high) return undefined;
  const today = sight.dateOf(sight.now_ms);
  const later = sight.airAt(sight.plant.spot, addDays(today, SEASON_STEP_d)).dli_mol_m2_d;
  const slope_mol_m2_d2 = Math.max(0.01, Math.abs(later - dli_mol_m2_d) / SEASON_STEP_d);
  const width_d = (sd: number) => Math.min(180, (2 * Z80 * sd * dli_mol_m2_d) / slope_mol_m2_d2);
  const narrower_d = width_d(sd_frac) - width_d(AFTER_PAIR_SD_frac);
  if (narrower_d < LEAST_NARROWER_d) return undefined;
  const words = lightingWords(sight.say);
  const then = (z: number) => lightSaid(dli_mol_m2_d * Math.exp(z * Z80 * AFTER_PAIR_SD_frac), sight.say);
  return {
    work: "measure",
    worth_d: Math.min(MOST_WORTH_d, narrower_d / 30),
    said: words.question(
      sight.say.name(sight.plant.id),
      words.range(lightSaid(low, sight.say), lightSaid(high, sight.say)),
      words.range(then(-1), then(1)),
    ),
    seconds: PAIR_s,
  };
}
