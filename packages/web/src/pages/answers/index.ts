import { type Entry, type Json, uuidMaker } from "@sillwood/bench/book";
import { PageError } from "@sillwood/bench/crafts";
import { howGood } from "@sillwood/bench/issued";
import {
  AbsenceError,
  assumptionsPage,
  awayPage,
  craftPage,
  type Desk,
  doubtsOf,
  logLine,
  looksPage,
  unreadableDrafts,
  wrongDesk,
} from "@sillwood/bench/pages";
import type { Answering } from "../../engine/questions.ts";
import type { HouseFacts, PageQuestions, SupplyRow, WrongSeen } from "../questions.ts";
import { benchesSeen } from "./benches.ts";
import { plantsSeen } from "./plants.ts";
import { thingsSeen } from "./things.ts";

const nextId = uuidMaker();
/** Feeds ids; 32 bits a draw are plenty for the 62 an id takes. */
const random = () => (crypto.getRandomValues(new Uint32Array(1))[0] as number) / 2 ** 32;

/** How the engine answers what the pages beside the round ask. */
export const pageAnswers: {
  readonly [Name in keyof PageQuestions]: (
    desk: Desk,
    args: PageQuestions[Name]["args"],
  ) => Answering<PageQuestions[Name]["answer"]>;
} = {
  ids: ({ now_ms }, { n }) => Array.from({ length: n }, () => nextId(now_ms, random)),
  plants: plantsSeen,
  benches: benchesSeen,
  things: thingsSeen,
  kinds: async ({ ledger }) => {
    const { isWritable, kindShape } = await import("./form-shapes.ts");
    return ledger.kinds.all.map(kindShape).filter(isWritable);
  },
  shape: async ({ ledger }, { kind: name }) => {
    const { kindShape } = await import("./form-shapes.ts");
    const kind = ledger.kinds.find(name);
    return kind ? kindShape(kind) : null;
  },
  entry: (desk, { entry }) => logLine(desk, entry) ?? null,
  first: async (desk, args) => (await import("./first.ts")).firstSaid(desk, args),
  "first drafts": async (_desk, args) => (await import("./first.ts")).firstDraftsFor(args),
  list: async (desk, args) =>
    (await import("./list.ts")).listSeen(desk, args, () => nextId(desk.now_ms, random)),
  doubts: (desk, { drafts }) =>
    doubtsOf(desk, drafts).map(({ plant, path, value, most, meant, unit }) => ({
      key: path.replace("data.", ""),
      number: desk.numberOf(plant),
      value,
      most,
      meant,
      unit,
    })),
  unreadable: ({ ledger }, { entry }) => unreadableDrafts(ledger, entry),
  sentences: ({ ledger, say }, { drafts }) =>
    drafts.map(({ kind, on, data, by, at_ms }) => {
      const said = ledger.kinds.find(kind)?.sentence(data, say, {} as Entry) ?? kind;
      return `${say.list(on.map((id) => say.name(id)))} ${said}, ${say.name(by)}, ${say.day(at_ms)} ${say.time(at_ms)}`.trim();
    }),
  takings: async (desk, { plant }) => (await import("./takings.ts")).takingsOf(desk, plant),
  wrong: wrongSeen,
  assumed: assumptionsPage,
  howGood,
  house: houseFacts,
  supplies: suppliesSeen,
  away: awaySeen,
  "craft page": craftPageSeen,
  crafts: (desk) =>
    desk.ledger.crafts.map(({ name }) => ({
      craft: name,
      due_n: desk.living().reduce((sum_n, plant) => {
        const tasks = desk.view(plant)?.tasks ?? [];
        const today = desk.ledger.calendar.dateOf(desk.now_ms);
        const isDue = (best_ms: number) => desk.ledger.calendar.dateOf(best_ms) <= today;
        return (
          sum_n +
          tasks.filter(({ craft, best_ms, must }) => craft === name && (must || isDue(best_ms))).length
        );
      }, 0),
    })),
};

async function craftPageSeen(
  desk: Desk,
  { craft, ask }: PageQuestions["craft page"]["args"],
): Promise<PageQuestions["craft page"]["answer"]> {
  try {
    return { page: await craftPage(desk, craft, ask) };
  } catch (error) {
    if (error instanceof PageError) return { refused: error.message };
    throw error;
  }
}

async function awaySeen(
  desk: Desk,
  absence: PageQuestions["away"]["args"],
): Promise<PageQuestions["away"]["answer"]> {
  try {
    return { plans: await awayPage(desk, absence) };
  } catch (error) {
    if (error instanceof AbsenceError) return { refused: error.message };
    throw error;
  }
}

async function wrongSeen(desk: Desk, { plant, seen }: PageQuestions["wrong"]["args"]): Promise<WrongSeen> {
  return {
    looks: await looksPage(desk),
    number: plant ? desk.numberOf(plant) : "",
    signs: plant ? await wrongDesk(desk, plant, seen) : [],
  };
}

function houseFacts({ ledger, facts, say }: Desk): HouseFacts {
  const { site, habits, habitsAssumed, light } = ledger.house().places;
  const tariff = light.tariffs.at(-1)?.data;
  const { minutes, weekdays, hour_h } = habits;
  const numbers = ledger.plants().map((plant) => facts(plant)?.number ?? 0);
  return {
    site,
    habits: { minutes, weekdays, ...(hour_h === undefined ? {} : { hour_h }) },
    habitsAssumed,
    entries_n: ledger.entries_n,
    plants_n: numbers.length,
    highest: numbers.reduce((most, number) => Math.max(most, number), 0),
    ...(tariff
      ? {
          tariff: { said: say.money(tariff.price_minor_kWh, site.currency), data: tariff as unknown as Json },
        }
      : {}),
  };
}

function suppliesSeen({ ledger, say }: Desk): readonly SupplyRow[] {
  return [...ledger.house().supplies.values()]
    .map(({ id, name, what, unit, onHand, lot, expires, price_minor, currency, countedAt_ms }) => ({
      id,
      name,
      what,
      unit,
      onHand,
      ...(lot ? { lot } : {}),
      ...(expires ? { expires } : {}),
      ...(price_minor === undefined ? {} : { price_minor }),
      ...(currency ? { currency } : {}),
      ...(countedAt_ms === undefined ? {} : { counted: say.day(countedAt_ms) }),
    }))
    .sort((a, b) => (a.what === b.what ? (a.name < b.name ? -1 : 1) : a.what < b.what ? -1 : 1));
}
