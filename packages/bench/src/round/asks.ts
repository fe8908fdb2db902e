import type { PlantEvent } from "../house/index.ts";
import type { Desk } from "../pages/desk.ts";
import { nameBook } from "../pages/names.ts";
import { craftAsks } from "../pages/world.ts";
import { type Overrode, roundKinds } from "./kinds.ts";
import type { Ask } from "./pages.ts";
import type { Work } from "./task.ts";
import { roundWords, workSaid } from "./words.ts";

/** Two acts of one kind on one plant by two people within so short a time are worth a question. */
const TWICE_WITHIN_ms = 6 * 3_600_000;
const LOOK_BACK_ms = 3 * 86_400_000;

/** What the book asks of people before or during a round: nothing is dropped in silence. */
export function asksOf(desk: Desk): Ask[] {
  return [
    ...sameNumbers(desk),
    ...doneTwice(desk),
    ...askedToAllow(desk),
    ...craftAsks(desk),
    ...leftForGrower(desk),
  ];
}

function sameNumbers(desk: Desk): Ask[] {
  const words = roundWords(desk.say);
  const { doubled } = nameBook(desk.ledger, desk.say.language);
  const highest = desk.ledger
    .plants()
    .reduce((most, plant) => Math.max(most, desk.facts(plant)?.number ?? 0), 100);
  return doubled.map((plant, i) => ({
    key: `number:${plant}`,
    said: words.sameNumber(desk.numberOf(plant)),
    plants: [plant],
    answers: [
      {
        said: words.newNumber(highest + 1 + i),
        entries: [{ kind: "plant.numbered", on: [plant], data: { number: highest + 1 + i } }],
      },
    ],
  }));
}

/** The same act entered by two people, or by one on two devices: asked, both kept until somebody says otherwise. */
function doneTwice(desk: Desk): Ask[] {
  const words = roundWords(desk.say);
  const { ledger, say, now_ms } = desk;
  const asks: Ask[] = [];
  for (const plant of desk.living()) {
    const events = eventsFrom(ledger.eventsOf(plant), now_ms - LOOK_BACK_ms);
    const settled_ms = lastSettled(events);
    const recent = events.filter(({ entry, kind }) =>
      kind.effects(entry.data, entry).some(({ effect }) => effect === "water in"),
    );
    for (let i = 1; i < recent.length; i++) {
      const [a, b] = [recent[i - 1]?.entry, recent[i]?.entry];
      const bySame = a?.by === b?.by && a?.device === b?.device;
      if (!a || !b || bySame || b.at_ms - a.at_ms > TWICE_WITHIN_ms || settled_ms > b.at_ms) continue;
      asks.push({
        key: `twice:${a.id}:${b.id}`,
        said: words.wateredTwice(
          desk.numberOf(plant),
          `${say.name(a.by)} ${say.time(a.at_ms)}`,
          `${say.name(b.by)} ${say.time(b.at_ms)}`,
        ),
        plants: [plant],
        answers: [
          { said: words.both(), entries: [{ kind: roundKinds.settled.kind, on: [plant], data: {} }] },
          {
            said: words.onlyFirst(),
            entries: [{ kind: "book.corrected", on: [], data: { withdrawn: true }, corrects: [b.id] }],
          },
        ],
      });
    }
  }
  return asks;
}

const lastSettled = (events: readonly PlantEvent[]): number =>
  events.reduce((last, { entry }) => (entry.kind === roundKinds.settled.kind ? entry.at_ms : last), 0);

function leftForGrower(desk: Desk): Ask[] {
  const words = roundWords(desk.say);
  return desk.living().flatMap((plant) => {
    const facts = desk.facts(plant);
    return (facts?.rounds.left ?? []).map((left) => ({
      key: `left:${left.entry}`,
      said: words.leftFor(desk.numberOf(plant), left.text, desk.say.name(left.by)),
      plants: [plant],
      answers: [
        { said: words.seenTo(), entries: [{ kind: roundKinds.settled.kind, on: [plant], data: {} }] },
      ],
    }));
  });
}

/** Somebody other than the grower asked today to do what is held back: the book keeps it, the grower's word counts. */
function askedToAllow(desk: Desk): Ask[] {
  const words = roundWords(desk.say);
  const { ledger, say, now_ms } = desk;
  const { roles } = ledger.house().people;
  const morning_ms = ledger.calendar.midnight_ms(ledger.calendar.dateOf(now_ms));
  return desk.living().flatMap((plant) => {
    const open = new Map<string, Ask>();
    for (const { entry } of eventsFrom(ledger.eventsOf(plant), morning_ms)) {
      if (entry.kind !== roundKinds.overrode.kind) continue;
      const { work, reason } = entry.data as unknown as Overrode;
      if (roles.get(entry.by) === "grower") open.delete(work);
      else
        open.set(work, {
          key: `allow:${entry.id}`,
          said: words.asksFor(desk.numberOf(plant), workSaid(work as Work, say), say.name(entry.by), reason),
          plants: [plant],
          growerOnly: true,
          answers: [
            {
              said: words.allowIt(),
              entries: [{ kind: roundKinds.overrode.kind, on: [plant], data: { work, reason } }],
            },
            {
              said: words.notToday(),
              entries: [{ kind: "book.corrected", on: [], data: { withdrawn: true }, corrects: [entry.id] }],
            },
          ],
        });
    }
    return [...open.values()];
  });
}

/** The end of a plant's line from an instant on, read from behind: a line is long and a day short. */
function eventsFrom(events: readonly PlantEvent[], from_ms: number): readonly PlantEvent[] {
  let first_n = events.length;
  while (first_n > 0 && (events[first_n - 1]?.entry.at_ms ?? 0) >= from_ms) first_n--;
  return events.slice(first_n);
}
