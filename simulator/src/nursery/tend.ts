import { DAY_ms } from "./calendar.ts";
import type { Chance } from "./chance.ts";
import { openness_frac, surfaceWetness_frac } from "./medium.ts";
import type { Look, Note, Said } from "./notes.ts";
import type { Eye, Person, Scale } from "./people.ts";
import { emptySaucer, type Pot, potAvailable_g, potDepletion_g, water, weight_g } from "./potted-plant.ts";

/** A pot with what people have got used to doing with it. */
export interface Tended {
  readonly key: number;
  readonly pot: Pot;
  /** Amount that stands on its label or in somebody's hand. */
  usual_mL: number;
  /** Weighings per dry-down. */
  readonly weighings_n: 0 | 1 | 2 | 4;
  /** Instants from which the next weighings are due. */
  weighAt_ms: number[];
  watered_ms: number;
  interval_d: number;
  /** By how much hands and eyes are wrong about this very pot: nobody has learned its full weight. */
  readonly misfelt_frac?: number;
  readonly from_ms: number;
  until_ms: number;
}

const WRONG_POT_frac = 0.01;
const SAUCER_ON_frac = 0.015;

/** What one person does with one pot on a round, and what of it they write. */
export function tend(
  tended: Tended,
  neighbour: Tended | undefined,
  person: Person,
  at_ms: number,
  chance: Chance,
  notes: Note[],
): void {
  const { pot } = tended;
  const write = (said: Said, after_s = 0) =>
    notes.push({ at_ms: at_ms + after_s * 1000, by: person.key, pots: [tended.key], ...said });
  const hanging = openness_frac(pot, pot.vessel.medium) * pot.roots_frac < 0.45;
  const depletion_frac = potDepletion_g(pot) / potAvailable_g(pot);

  const weighDue = tended.weighAt_ms.length > 0 && at_ms >= (tended.weighAt_ms[0] as number);
  const wants = wantsWater(tended, person, at_ms, hanging, chance);
  if (weighDue || (wants && tended.weighAt_ms.length > 0)) {
    write({
      what: "weighed",
      weight_g: readScale(pot, neighbour?.pot, person, "as found", chance),
      state: "as found",
    });
    tended.weighAt_ms.shift();
  }
  if (hanging && depletion_frac < 0.4) {
    // Hanging in wet medium: bad roots, not thirst.
    if (chance.happens(0.8)) write({ what: "looked", look: "drooping", yes: true });
    if (chance.happens(0.7)) write({ what: "looked", look: "heavy", yes: true }, 5);
    return;
  }
  if (!wants) {
    if (chance.happens(person.writesLook_frac * 0.25)) write(stillWet(depletion_frac, person.eye, chance));
    return;
  }
  const forgets = chance.happens(person.forgets_frac);
  if (!forgets && chance.happens(person.writesLook_frac))
    write({ what: "looked", look: whyDry(hanging, person, chance), yes: true });
  const given = give(tended, person, chance);
  if (!forgets) write(given.said, 15);
  settle(tended, at_ms, chance);
  if (!forgets && tended.weighings_n >= 2)
    write(
      {
        what: "weighed",
        weight_g: readScale(pot, neighbour?.pot, person, "just drained", chance),
        state: "just drained",
      },
      45,
    );
  if (chance.happens(person.emptiesSaucer_frac)) emptySaucer(pot);
}

/** After a watering: how long the last one held, and when to weigh on the way down. */
export function settle(tended: Tended, at_ms: number, chance: Chance): void {
  const since_d = (at_ms - tended.watered_ms) / DAY_ms;
  if (since_d > 0.5) tended.interval_d = since_d;
  tended.watered_ms = at_ms;
  const onTheWay = tended.weighings_n === 0 ? 0 : tended.weighings_n === 4 ? 3 : 1;
  tended.weighAt_ms = Array.from(
    { length: onTheWay },
    (_, i) => at_ms + tended.interval_d * DAY_ms * ((i + chance.between(0.3, 0.9)) / onTheWay),
  );
}

function wantsWater(
  tended: Tended,
  person: Person,
  at_ms: number,
  hanging: boolean,
  chance: Chance,
): boolean {
  const { pot } = tended;
  if (person.watersToday !== undefined || person.habit_d !== undefined) {
    const gone_frac = potDepletion_g(pot) / potAvailable_g(pot);
    // Even who goes by the calendar sees a tree that hangs.
    if (person.eye && hanging && gone_frac > 0.5) return true;
    if (!habitSays(tended, person, at_ms)) return false;
    return !(gone_frac < 0.12 && person.sparesWet_frac && chance.happens(person.sparesWet_frac));
  }
  const lifted_frac = potDepletion_g(pot) / potAvailable_g(pot) + (tended.misfelt_frac ?? 0);
  const seen_frac = 1 - surfaceWetness_frac(pot, pot.vessel.medium);
  const felt_frac = person.goesBySurface_frac * seen_frac + (1 - person.goesBySurface_frac) * lifted_frac;
  if (hanging && felt_frac > 0.4) return true;
  return felt_frac + chance.normal(0, person.wobble_frac) > person.dryAt_frac;
}

function habitSays(tended: Tended, person: Person, at_ms: number): boolean {
  const since_d = (at_ms - tended.watered_ms) / DAY_ms;
  if (person.watersToday !== undefined) return person.watersToday && since_d > 0.5;
  return since_d > (person.habit_d ?? 0) - 0.5;
}

/** Pours as this person pours; what is written differs from what landed. */
export function give(
  tended: Tended,
  person: Person,
  chance: Chance,
  asked_mL?: number,
): { readonly said: Said; readonly leached_g: number } {
  const { pot } = tended;
  let written_mL: number;
  let leached_g = 0;
  if (asked_mL !== undefined || person.pours === "jug") {
    written_mL = Math.max(20, Math.round((asked_mL ?? tended.usual_mL) / 10) * 10);
    leached_g = water(pot, written_mL * person.hand_frac * chance.logNormal(1, 0.04)).leached_g;
  } else {
    const sip_mL = Math.max(10, tended.usual_mL / 6);
    let poured_mL = 0;
    while (leached_g < tended.usual_mL * 0.15 && poured_mL < tended.usual_mL * 3) {
      leached_g += water(pot, sip_mL).leached_g;
      poured_mL += sip_mL;
    }
    written_mL = Math.max(
      20,
      Math.round(((poured_mL / person.hand_frac) * chance.logNormal(1, 0.05)) / 10) * 10,
    );
  }
  return {
    said: { what: "watered", volume_mL: written_mL, drained: saidOfDrain(leached_g, person, chance) },
    leached_g,
  };
}

function saidOfDrain(leached_g: number, person: Person, chance: Chance): "yes" | "no" | "unknown" {
  if (!chance.happens(person.saysDrained_frac)) return "unknown";
  if (leached_g > 5) return "yes";
  return leached_g < 0.5 ? "no" : "unknown";
}

/** What the scale shows and the hand writes: the pot, with what is under it, or its neighbour. */
export function readScale(
  pot: Pot,
  neighbour: Pot | undefined,
  person: Person,
  state: "as found" | "just drained",
  chance: Chance,
): number {
  const wrong = neighbour !== undefined && chance.happens(person.wrongPot_frac ?? WRONG_POT_frac);
  const on = wrong ? neighbour : pot;
  const saucer_g = chance.happens(SAUCER_ON_frac) ? Math.max(on.saucer_g, chance.between(15, 60)) : 0;
  const dripping_g = state === "just drained" ? -Math.log(1 - chance.uniform()) * 0.006 * weight_g(on) : 0;
  const lies_g = weight_g(on) + saucer_g + dripping_g + chance.normal(0, 0.8);
  const shown_g = person.scale ? lies_g * person.scale.gain_frac + zeroOf_g(person.scale, pot.at_ms) : lies_g;
  const read_g = Math.max(1, Math.round(shown_g / person.scaleStep_g) * person.scaleStep_g);
  if (!person.turnsDigits_frac || !chance.happens(person.turnsDigits_frac)) return read_g;
  return turned(read_g, chance);
}

function zeroOf_g(scale: Scale, at_ms: number): number {
  const day = Math.max(0, Math.floor((at_ms - scale.from_ms) / DAY_ms));
  return scale.zero_g[Math.min(day, scale.zero_g.length - 1)] ?? 0;
}

/** Two neighbouring digits change places. */
function turned(read_g: number, chance: Chance): number {
  const digits = [...String(read_g)];
  const at = chance.whole(0, Math.max(0, digits.length - 2));
  const [first = "", second = ""] = [digits[at], digits[at + 1]];
  digits.splice(at, 2, second, first);
  return Math.max(1, Number(digits.join("")));
}

function whyDry(hanging: boolean, person: Person, chance: Chance): Look {
  if (hanging) return "drooping";
  return chance.happens(person.goesBySurface_frac + 0.3) ? "dry" : "light";
}

/** What somebody says of a pot that they leave as it is. */
function stillWet(depletion_frac: number, eye: Eye | undefined, chance: Chance): Said {
  const seen_frac = eye
    ? depletion_frac + eye.bias_frac + chance.normal(0, eye.scatter_frac)
    : depletion_frac;
  if (seen_frac < (eye?.wetTo_frac ?? 0.15)) return { what: "looked", look: "wet", yes: true };
  if (seen_frac < (eye?.moistTo_frac ?? 0.45) && chance.happens(0.5))
    return { what: "looked", look: "moist", yes: true };
  return { what: "looked", look: chance.happens(0.5) ? "dry" : "light", yes: false };
}
