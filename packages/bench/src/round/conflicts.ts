import type { Task, Work } from "./task.ts";

/**
 * Rules of the house about work on one plant on one day, as data. What a craft itself forbids comes as limits; these say in
 * which order hands go, and what does not go together at all. All of them are common practice, no source.
 */
export interface OrderRule {
  readonly before: Work;
  readonly after: Work;
  readonly why: { readonly en: string; readonly de: string };
}

export const orderRules: readonly OrderRule[] = [
  { before: "look", after: "water", why: { en: "look before you pour", de: "erst schauen, dann gießen" } },
  {
    before: "weigh",
    after: "water",
    why: { en: "the weight before watering says more", de: "das Gewicht vor dem Gießen sagt mehr" },
  },
  { before: "pick", after: "spray", why: { en: "pick before you spray", de: "erst ernten, dann spritzen" } },
  {
    before: "cut",
    after: "wash",
    why: { en: "a hard cut comes before the root wash", de: "der harte Schnitt kommt vor dem Auswaschen" },
  },
  {
    before: "cut",
    after: "repot",
    why: { en: "cut before the roots are bare", de: "schneiden, bevor die Wurzeln frei liegen" },
  },
  {
    before: "water",
    after: "feed",
    why: { en: "never feed a dry medium", de: "nie auf trockenes Substrat düngen" },
  },
  {
    before: "brush",
    after: "spray",
    why: { en: "flowers before anything wet", de: "Blüten vor allem Nassen" },
  },
];

export interface ApartRule {
  readonly one: Work;
  readonly other: Work;
  readonly why: { readonly en: string; readonly de: string };
}

/** Work that is not done on the same plant on the same day; the one that can wait longer waits. */
export const apartRules: readonly ApartRule[] = [
  {
    one: "spray",
    other: "brush",
    why: { en: "no spray on flowers brushed today", de: "kein Spritzen auf heute bestäubte Blüten" },
  },
  {
    one: "feed",
    other: "repot",
    why: { en: "fresh medium needs no feed", de: "frisches Substrat braucht keinen Dünger" },
  },
  {
    one: "spray",
    other: "repot",
    why: { en: "bare roots take no spray", de: "freie Wurzeln vertragen kein Spritzen" },
  },
];

/** Tasks of one plant in the order of hands: rules first, then what is latest soonest. Stable for equal tasks. */
export function inHandOrder(tasks: readonly Task[]): readonly Task[] {
  const left = [...tasks].sort((a, b) => a.latest_ms - b.latest_ms || (a.id < b.id ? -1 : 1));
  const ordered: Task[] = [];
  while (left.length > 0) {
    const next = left.findIndex((task) => !left.some((other) => other !== task && comesFirst(other, task)));
    // A circle of rules would be a mistake in the data above (a test looks for one); then the soonest goes first.
    ordered.push(...left.splice(Math.max(0, next), 1));
  }
  return ordered;
}

const comesFirst = (a: Task, b: Task) =>
  orderRules.some((rule) => rule.before === a.work && rule.after === b.work);

export interface KeptApart {
  readonly today: readonly Task[];
  readonly waits: readonly { readonly task: Task; readonly because: Task; readonly rule: ApartRule }[];
}

/** Of two tasks that do not go together the one with the later latest date waits; a must never waits for a can. */
export function keepApart(tasks: readonly Task[]): KeptApart {
  const byNeed = [...tasks].sort(
    (a, b) => Number(b.must) - Number(a.must) || a.latest_ms - b.latest_ms || (a.id < b.id ? -1 : 1),
  );
  const today: Task[] = [];
  const waits: { task: Task; because: Task; rule: ApartRule }[] = [];
  for (const task of byNeed) {
    const clash = today
      .map((because) => ({ because, rule: apartRules.find((rule) => isPair(rule, task, because)) }))
      .find((found): found is { because: Task; rule: ApartRule } => found.rule !== undefined);
    if (clash) waits.push({ task, ...clash });
    else today.push(task);
  }
  return { today, waits };
}

const isPair = (rule: ApartRule, a: Task, b: Task) =>
  (rule.one === a.work && rule.other === b.work) || (rule.one === b.work && rule.other === a.work);
