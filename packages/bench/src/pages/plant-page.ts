import type { PlantId } from "../book/entry.ts";
import type { Outlook } from "../crafts/craft.ts";
import type { Ledger } from "../house/index.ts";
import { laterBenches } from "../places/later-benches.ts";
import { benchesInOrder } from "../places/places.ts";
import { addDays } from "../places/time.ts";
import { MEDIUM_WORDS, potSaid } from "../plants/sentences.ts";
import { inHandOrder } from "../round/conflicts.ts";
import type { PlantPage } from "../round/pages.ts";
import { stageSaid } from "../words/stage-names.ts";
import type { Desk } from "./desk.ts";
import { logPage } from "./log-page.ts";
import { kindSaid } from "./names.ts";
import { staleWeatherSaid } from "./weather-said.ts";
import { pageWords } from "./words.ts";

const DAY_LINE_d = 14;

/** Everything about one plant for the next fourteen days; undefined when the book has not met it. */
export function plantPage(desk: Desk, plant: PlantId): PlantPage | undefined {
  const view = desk.view(plant);
  if (!view) return undefined;
  const { ledger, say, now_ms } = desk;
  const { facts, outlooks } = view;
  const { places } = ledger.house();
  const benchId = places.benchOfSpot.get(facts.spot ?? "");
  const bench = benchId === undefined ? undefined : places.benches.get(benchId);
  const today = ledger.calendar.dateOf(now_ms);
  const days = Array.from({ length: DAY_LINE_d }, (_, i) => {
    const date = addDays(today, i);
    const from_ms = ledger.calendar.midnight_ms(date);
    return { date, from_ms, to_ms: ledger.calendar.nextMidnight_ms(from_ms), said: say.day(from_ms) };
  });
  const neighbours = inWalkingOrder(desk);
  const at = neighbours.indexOf(plant);
  const before = neighbours[at - 1];
  const after = at < 0 ? undefined : neighbours[at + 1];
  const pick = <Part extends keyof Outlook>(part: Part) =>
    outlooks.flatMap(({ craft, outlook }) =>
      outlook[part] === undefined ? [] : [{ craft, part: outlook[part] as NonNullable<Outlook[Part]> }],
    );
  const question = pick("question").sort((a, b) => b.part.worth_d - a.part.worth_d)[0]?.part;
  const last = logPage(desk, { plant, most_n: 1 })[0];
  const photo = facts.photos[facts.photos.length - 1]?.file;
  const words = pageWords(say);
  const weatherSaid = bench?.outdoors ? staleWeatherSaid(desk) : undefined;
  return {
    plant,
    number: desk.numberOf(plant),
    kind: kindSaid(facts, ledger, say.language, now_ms),
    ...(bench && facts.spot
      ? { spot: { id: facts.spot, name: say.name(facts.spot), bench: bench.id, benchName: bench.name } }
      : facts.spot
        ? placeSaid(desk, facts.spot)
        : {}),
    ...(before ? { before } : {}),
    ...(after ? { after } : {}),
    ...(photo ? { photo } : {}),
    ...(facts.ended ? { ended: words.ended(facts.ended.how, say.day(facts.ended.at_ms)) } : {}),
    facts: factsSaid(desk, plant),
    days,
    lines: pick("line").map(({ craft, part }) => ({ craft, line: part })),
    heads: pick("head").map(({ craft, part }) => ({ craft, head: part })),
    tasks: inHandOrder(view.tasks),
    held: view.held,
    limits: view.limits,
    ...(question ? { question } : {}),
    ...(weatherSaid === undefined ? {} : { weatherSaid }),
    charts: pick("chart").map(({ craft, part }) => ({ craft, chart: part })),
    workings: outlooks.flatMap(({ outlook }) => outlook.workings),
    problems: [...view.state.problems, ...outlooks.flatMap(({ outlook }) => outlook.problems)].map(
      ({ message }) => message,
    ),
    ...(last?.said ? { last: { at_ms: last.at_ms, said: last.said } } : {}),
    figures: Object.fromEntries(outlooks.map(({ craft, outlook }) => [craft, outlook.figures])),
  };
}

/** A spot whose bench this moment of the book does not know: laid later, or its entry is not here yet. */
function placeSaid(desk: Desk, spot: string): { readonly placeSaid: string } {
  const { ledger, say, now_ms } = desk;
  const later = laterBenches(ledger.records(), now_ms).get(spot);
  const words = pageWords(say);
  return { placeSaid: later ? words.laidLater(later.name, say.day(later.laid_ms)) : words.benchUnmet() };
}

const walks = new WeakMap<Ledger, { readonly revision: number; readonly plants: readonly PlantId[] }>();

/** All plants as they stand: bench after bench, spot after spot; those without a spot last. */
export function inWalkingOrder(desk: Desk): readonly PlantId[] {
  const revision = desk.ledger.factsRevision;
  const known = walks.get(desk.ledger);
  if (known?.revision === revision) return known.plants;
  const { places } = desk.ledger.house();
  const order = new Map<string, number>();
  for (const bench of benchesInOrder(places)) for (const spot of bench.spots) order.set(spot.id, order.size);
  const place = (plant: PlantId) => order.get(desk.facts(plant)?.spot ?? "") ?? Number.MAX_SAFE_INTEGER;
  const walked = desk
    .living()
    .map((plant) => ({ plant, place: place(plant) }))
    .sort((a, b) => a.place - b.place || (a.plant < b.plant ? -1 : 1))
    .map(({ plant }) => plant);
  walks.set(desk.ledger, { revision, plants: walked });
  return walked;
}

function factsSaid(desk: Desk, plant: PlantId): PlantPage["facts"] {
  const { say, ledger } = desk;
  const words = pageWords(say);
  const facts = desk.facts(plant);
  if (!facts) return [];
  const measured = (name: string, said: string, at_ms: number) => ({
    name,
    said,
    origin: "measured" as const,
    from: words.measuredOn(say.day(at_ms)),
  });
  const guess = { origin: "assumed" as const, from: words.notWritten() };
  const potted_ms = facts.pottedAt_ms ?? facts.broughtAt_ms;
  const parents = [
    facts.seedLot && words.seedLot(facts.seedLot),
    facts.mother && words.mother(say.name(facts.mother)),
    facts.father && words.father(say.name(facts.father)),
    facts.rootstock && words.rootstock(facts.rootstock),
  ];
  const said = parents.filter((one): one is string => Boolean(one));
  return [
    facts.pot
      ? measured(words.pot(), potSaid(facts.pot, say), potted_ms)
      : { name: words.pot(), said: words.unknown(), ...guess },
    facts.medium === "unknown"
      ? { name: words.medium(), said: words.unknown(), ...guess }
      : measured(words.medium(), MEDIUM_WORDS[say.language][facts.medium], potted_ms),
    ...(facts.height_cm
      ? [measured(words.height(), say.length(facts.height_cm.value), facts.height_cm.at_ms)]
      : []),
    ...(facts.caliper_mm
      ? [measured(words.caliper(), say.thickness(facts.caliper_mm.value), facts.caliper_mm.at_ms)]
      : []),
    ...(facts.leaves_n
      ? [measured(words.leaves(), say.number(facts.leaves_n.value), facts.leaves_n.at_ms)]
      : []),
    ...(facts.stage ? [measured(words.stage(), stageSaid(facts.stage.value, say), facts.stage.at_ms)] : []),
    ...(said.length > 0 ? [measured(words.parents(), say.list(said), facts.broughtAt_ms)] : []),
    ...(facts.cultivar && ledger.house().batches.cultivars.get(facts.cultivar)?.propagationRestricted
      ? [measured(words.cultivar(), words.restricted(), facts.broughtAt_ms)]
      : []),
  ];
}
