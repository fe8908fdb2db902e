import { breakEvenKill_frac, courseCleared, pestPace, treatmentsNeeded_n } from "@sillwood/science/pests";
import type { Say } from "../../words/say.ts";
import { PageError, type World, type WorldMember } from "../craft.ts";
import type { CourseAsk, CourseSaid, SprayGate } from "./page-shape.ts";
import { CLOCKS, clockedPests, KILLS, reaches, tools } from "./pests.ts";
import { fraction } from "./said-numbers.ts";
import type { ScoutSlice } from "./slice.ts";
import { scoutingWords } from "./words.ts";
import { pageWords } from "./words-page.ts";

const DAY_ms = 86_400_000;
/** Soap and oil burn from there; not below; warm for oil. @source the pest sheet, treatment practice */
const [HOT_C, COLD_C, WARMISH_C] = [32, 5, 27];
/** No spray on a plant that used more of its water. @source the pest sheet: our assumption */
const THIRSTY_frac = 0.4;
const [REPOTTED_d, OFTEN_d] = [7, 3];

type Member = WorldMember<ScoutSlice>;

/** What must hold before anything is sprayed on a plant, as far as the book knows. */
export function sprayGates(world: World<ScoutSlice>, { sight, plant, slice }: Member): readonly SprayGate[] {
  const { say, now_ms } = world;
  const { gate } = pageWords(say);
  const day = sight.airAt(plant.spot, sight.dateOf(now_ms));
  const spell = day.spells.find(({ from_ms, to_ms }) => from_ms <= now_ms && now_ms < to_ms) ?? day.spells[0];
  const air_C = spell?.air_C ?? 18;
  const air = say.temperature(air_C);
  const [held, capacity, flowers] = [
    sight.read("waterHeld_g").value,
    sight.read("capacity_g").value,
    sight.read("openFlowers_n").value,
  ];
  const left = Math.max(0, Math.min(1, held / Math.max(1, capacity)));
  const potted_d =
    plant.pottedAt_ms === undefined ? Number.POSITIVE_INFINITY : (now_ms - plant.pottedAt_ms) / DAY_ms;
  const last = slice.acts.findLast((act) => act.act === "treat");
  const one = (key: string, state: SprayGate["state"], said: string): SprayGate => ({ key, state, said });
  return [
    air_C >= HOT_C
      ? one("heat", "shut", gate.heat(air))
      : air_C < COLD_C
        ? one("heat", "shut", gate.cold(air))
        : air_C >= WARMISH_C
          ? one("heat", "careful", gate.warmish(air))
          : one("heat", "open", gate.airOk(air)),
    left < THIRSTY_frac
      ? one("thirst", "shut", gate.thirst(say.percent(left)))
      : one("thirst", "open", gate.thirstOk(say.percent(left))),
    flowers >= 1
      ? one("flowers", "careful", gate.flowers(say.number(flowers, 0)))
      : one("flowers", "open", gate.flowersOk("")),
    ...(spell && spell.light === "lamp" ? [one("lamps", "careful", gate.lamps(""))] : []),
    potted_d < REPOTTED_d
      ? one("repotted", "shut", gate.repotted(say.number(potted_d, 0)))
      : one("repotted", "open", gate.repottedOk("")),
    last && now_ms - last.at_ms < OFTEN_d * DAY_ms
      ? one("often", "careful", gate.often(say.day(last.at_ms, now_ms)))
      : one("often", "open", gate.oftenOk("")),
    one("new", "careful", gate.newKind("")),
  ];
}

export function readCourse(ask: unknown, say: Say): CourseAsk {
  const course = ask as Partial<CourseAsk>;
  const fits =
    typeof ask === "object" &&
    ask !== null &&
    tools.some((tool) => tool === course.tool) &&
    clockedPests.some((pest) => pest === course.pest) &&
    inside(course.every_d, 1, 60) &&
    inside(course.treatments_n, 1, 20) &&
    (course.coverage_frac === undefined || inside(course.coverage_frac, 0.1, 1)) &&
    (course.animals_n === undefined || inside(course.animals_n, 1, 10_000));
  if (!fits) throw new PageError(pageWords(say).badCourse);
  return course as CourseAsk;
}
const inside = (value: unknown, min: number, max: number): boolean =>
  typeof value === "number" && value >= min && value <= max;

/** Whether a course can win at its interval and coverage, and how sure it then clears the plant. */
export function courseSaid(
  course: CourseAsk,
  world: World<ScoutSlice>,
  { sight, plant }: Member,
): CourseSaid {
  const { say, now_ms } = world;
  const page = pageWords(say);
  const words = scoutingWords(say);
  const { spells } = sight.airAt(plant.spot, sight.dateOf(now_ms));
  const air_C = spells.reduce((sum, spell) => sum + spell.air_C, 0) / Math.max(1, spells.length);
  const { rate_per_d } = pestPace({ pest: CLOCKS[course.pest], air_C: Math.max(-10, Math.min(50, air_C)) });
  const kill = KILLS[course.tool];
  const coverage = course.coverage_frac ?? sight.assumed("pestCoverage");
  const reach = reaches(course.tool, course.pest) ? 1 : 0.02;
  const hits = course.pest === "fungus gnat" ? kill.young : (kill.young + kill.adult) / 2;
  const kill_frac = Math.min(0.99, Math.max(0.01, hits * coverage * reach));
  const animals_n = course.animals_n ?? 40;
  const rates = { rate_per_d, interval_d: course.every_d };
  const needs = breakEvenKill_frac(rates);
  const needed = treatmentsNeeded_n({ animals_n, aim_n: 0.05, kill_frac, ...rates });
  const { cleared_frac } = courseCleared({
    animals_n,
    kill_frac,
    treatments_n: course.treatments_n,
    ...rates,
    survivalClumping: sight.assumed("pestSurvive"),
  });
  const every = `${say.number(course.every_d)} d`;
  const said =
    needed === null
      ? [page.never(say.percent(needs), every), page.remedies]
      : [
          page.win(say.number(Math.ceil(needed), 0), fraction(cleared_frac)),
          page.again(say.day(now_ms + course.every_d * DAY_ms, now_ms)),
        ];
  return {
    canWin: needed !== null,
    said,
    working: {
      title: page.courseTitle,
      result: said[0] ?? "",
      value: cleared_frac,
      unit: "",
      origin: "assumed",
      formula: "k > 1 − exp(−r τ); n = ln(N/ε) / (−ln(1 − k) − r τ); P0 = (1 + μ/κ)^−κ",
      sum: `1 − exp(−${say.number(rate_per_d, 2)} × ${say.number(course.every_d)}) = ${say.number(needs, 2)}; k = ${say.number(kill_frac, 2)}`,
      inputs: [
        {
          name: words.pest(course.pest),
          said: say.number(rate_per_d, 2),
          value: rate_per_d,
          unit: "1/d",
          origin: "assumed",
          from: `${say.temperature(air_C)}`,
        },
        {
          name: words.tool(course.tool),
          said: say.percent(kill_frac),
          value: kill_frac,
          unit: "",
          origin: "assumed",
          from: "our assumption",
          assumption: "pestCoverage",
        },
      ],
      source: "our assumption: exponential growth, survivors that sit together (science/pests)",
      notes: [],
    },
  };
}
