import {
  type AcceptedEntry,
  accept,
  acceptedKinds,
  CORRECTED,
  type DeviceId,
  type Entry,
  penOf,
  readersFrom,
  refKey,
  type SyncTransport,
  sha256Hex,
  syncOnce,
  uuidMaker,
} from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger, type Ledger } from "@sillwood/bench/house";
import { deskAt } from "@sillwood/bench/pages";
import { theRound } from "@sillwood/bench/round";
import { memoryStore } from "@sillwood/store/memory";
import { seeded } from "../../../packages/bench/test/entry-maker.ts";
import { GROWER, plantId, START_ms, TEST_SITE, testLedger } from "../../../packages/bench/test/toy.ts";
import { directTransport } from "../../../packages/store/test/direct-transport.ts";

/** A bug put in on purpose, to see the storm notice it. */
export type Planted = "forgets the last of each batch" | "folds by arrival";

export interface Storm {
  readonly entries_n: number;
  readonly faults_n: number;
  /** What came to pass, for whoever looks into a seed that failed. */
  readonly log: readonly string[];
  /** Undefined when every replica holds the same book and sees the same round. */
  readonly failed?: string;
}

const DEVICES_n = 5;
const STEPS_n = 50;
const PLANTS_n = 4;
const HOUR_ms = 3_600_000;
const kinds = acceptedKinds(testLedger(crafts).kinds);
const readersOf = readersFrom(kinds);
/** All ask for the round at one moment. */
const NOW_ms = START_ms + 20 * 24 * HOUR_ms;

type Store = ReturnType<typeof memoryStore>;
interface Phone {
  id: string;
  store: Store;
  /** Folded as entries came, as an app does that stays open. */
  ledger: Ledger;
  pen: ReturnType<typeof penOf>;
  /** How far its clock is ahead [ms]: days, for some. */
  readonly ahead_ms: number;
  readonly person: string;
}

class Broken extends Error {}

/**
 * One history of five devices and a server under everything that befalls them: dropped requests, replies lost after the commit,
 * turned and repeated uploads, clocks days off, crashes in the middle of a pass, an app installed anew, a cloned phone, a server
 * restored from an old copy. At rest all must hold one book and see one round. The same seed gives the same history.
 */
export async function playStorm(seed: number, planted?: Planted): Promise<Storm> {
  const random = seeded(seed);
  const nextId = uuidMaker();
  const pick = <Item>(items: readonly Item[]) => items[Math.floor(random() * items.length)] as Item;
  const log: string[] = [];
  let true_ms = START_ms;
  let faults_n = 0;
  let server = memoryStore();
  let saved = memoryStore();
  const written: Entry[] = [];

  const penFor = (device: string, person: string, ahead_ms: number, ledger: Ledger) =>
    penOf({
      device: device as DeviceId,
      by: person,
      zone: TEST_SITE.zone,
      kinds: ledger.kinds,
      now_ms: () => true_ms + ahead_ms,
      random,
    });
  const newPhone = (person: string, ahead_ms: number): Phone => {
    const [id, ledger] = [nextId(true_ms, random), testLedger(crafts)];
    return { id, store: memoryStore(), ledger, pen: penFor(id, person, ahead_ms, ledger), ahead_ms, person };
  };
  const helper = nextId(START_ms, random);
  const phones = Array.from({ length: DEVICES_n }, (_, i) =>
    newPhone(i < 2 ? GROWER : helper, random() < 0.4 ? Math.round((random() - 0.5) * 6 * 24 * HOUR_ms) : 0),
  );

  const sync = async (phone: Phone, peaceful: boolean) => {
    const direct = plantedIn(
      directTransport(server, kinds, () => true_ms),
      planted,
    );
    const report = await syncOnce({
      store: phone.store,
      transport: peaceful ? direct : faulty(direct, random, () => faults_n++),
      kinds,
      now_ms: () => true_ms + phone.ahead_ms,
      onArrived: (entries) => phone.ledger.add(entries.map(({ entry }) => entry)),
    });
    if (report.latestClock !== undefined) phone.pen.see(report.latestClock, true_ms + phone.ahead_ms);
    return report.sent_n + report.fetched_n;
  };
  const write = async (phone: Phone) => {
    const draft = draftFor(random, written, phone);
    const judged = accept(phone.pen.write(draft), kinds);
    if (!judged.ok)
      throw new Error(`the storm writes what the gate refuses: ${JSON.stringify(judged.problems)}`);
    await phone.store.append({ entries: [judged], redacted: [] });
    phone.ledger.add([judged.entry]);
    written.push(judged.entry);
    log.push(`${phones.indexOf(phone)} writes ${judged.entry.kind} ${judged.entry.id}`);
  };

  await write(phones[0] as Phone);
  for (let step = 0; step < STEPS_n; step++) {
    true_ms += Math.floor(random() * 12 * HOUR_ms);
    const phone = pick(phones);
    const draw = random();
    if (draw < 0.55) await write(phone);
    else if (draw < 0.9) {
      await sync(phone, false).then(
        () => log.push(`${phones.indexOf(phone)} syncs`),
        (error: unknown) => {
          if (!(error instanceof Broken)) throw error;
          log.push(`${phones.indexOf(phone)} breaks off: ${error.message}`);
        },
      );
    } else if (draw < 0.92) saved = await copyOf(server);
    else if (draw < 0.94) {
      server = await copyOf(saved);
      log.push("the server comes back from an old copy");
    } else if (draw < 0.96 && phones.length < DEVICES_n + 2) {
      // A clone goes on under the same id, with the same book and a clock of its own.
      const ledger = testLedger(crafts);
      ledger.add(await entriesOf(phone.store));
      phones.push({
        ...phone,
        store: await copyOf(phone.store),
        ledger,
        pen: penFor(phone.id, phone.person, 0, ledger),
      });
      log.push(`${phones.indexOf(phone)} is cloned`);
    } else if (draw < 0.98) {
      // What it had handed in stays; what it had not is gone with it, as with a phone in a bucket.
      const at = phones.indexOf(phone);
      phones[at] = newPhone(phone.person, phone.ahead_ms);
      log.push(`${at} is installed anew`);
    } else {
      // The app ends at once and starts from its disk.
      phone.ledger = testLedger(crafts);
      phone.ledger.add(await entriesOf(phone.store));
      log.push(`${phones.indexOf(phone)} crashes`);
    }
  }

  const alive = new Set(
    (await Promise.all([server, ...phones.map(({ store }) => store)].map(refsOf))).flat().map(refKey),
  );
  for (let round = 0, moved_n = 1; moved_n > 0 && round < 6; round++) {
    moved_n = 0;
    for (const phone of phones) moved_n += await sync(phone, true);
  }
  const failed = await compare(server, phones, [...alive], planted);
  return { entries_n: written.length, faults_n, log, ...(failed === undefined ? {} : { failed }) };
}

const digestOf = async (store: Store) =>
  JSON.stringify(Object.entries(await store.summary(readersOf)).sort());

/** How the replicas differ; undefined when they do not. */
async function compare(
  server: Store,
  phones: readonly Phone[],
  alive: readonly string[],
  planted: Planted | undefined,
): Promise<string | undefined> {
  const digest = await digestOf(server);
  const here = new Set((await refsOf(server)).map(refKey));
  const lost = alive.filter((key) => !here.has(key));
  if (lost.length > 0) return `lost ${lost.join(", ")}`;
  const fromNothing = createLedger({ crafts, site: TEST_SITE });
  fromNothing.add(await entriesOf(server));
  const round = roundOf(fromNothing);
  for (const [i, { store, ledger }] of phones.entries()) {
    if ((await digestOf(store)) !== digest) return `device ${i} has another digest`;
    const own =
      planted === "folds by arrival" ? roundOf(lastArrivalWins(await entriesOf(store))) : roundOf(ledger);
    if (own !== round) return `device ${i} sees another round`;
  }
  return undefined;
}

/** A fold with a bug: of two corrections the one that came last counts, whatever its clock. */
function lastArrivalWins(entries: readonly Entry[]): Ledger {
  const ledger = testLedger(crafts);
  ledger.add(
    entries.map((entry, i) => (entry.kind === CORRECTED ? { ...entry, clock: clockAfter(i) } : entry)),
  );
  return ledger;
}
const clockAfter = (i: number) => `2199-01-01T00:00:00.000Z/${i.toString(16).padStart(4, "0")}`;

const roundOf = (ledger: Ledger): string =>
  JSON.stringify(theRound(deskAt(ledger, { now_ms: NOW_ms, language: "en", units: "metric" }), {}));

/** What somebody writes on a round, or puts right afterwards. */
function draftFor(random: () => number, written: readonly Entry[], phone: Phone) {
  const draw = random();
  const plant = plantId(1 + Math.floor(random() * PLANTS_n));
  const first = written.filter(({ kind }) => kind !== CORRECTED);
  const other = first[Math.floor(random() * first.length)];
  if (written.length === 0)
    return { kind: "person.joined", on: [phone.person], data: { role: "grower" } } as const;
  if (written.length <= PLANTS_n || draw < 0.05)
    return {
      kind: "plant.brought",
      on: [plantId(1 + (written.length % PLANTS_n))],
      data: { number: 120 + (written.length % PLANTS_n), habit: "thin", medium: "spongy" },
    } as const;
  if (other && draw < 0.15)
    return { kind: CORRECTED, on: [], data: { withdrawn: true }, corrects: [other.id] } as const;
  if (other && draw < 0.2)
    return { kind: CORRECTED, on: [], data: { restored: true }, corrects: [other.id] } as const;
  const watered = first.filter(({ kind }) => kind === "watering.watered");
  const poured = watered[Math.floor(random() * watered.length)];
  const volume_mL = 50 + 10 * Math.floor(random() * 20);
  if (poured && draw < 0.35)
    return {
      kind: CORRECTED,
      on: [],
      data: { data: { volume_mL, drained: "yes" } },
      corrects: [poured.id],
    } as const;
  return draw < 0.7
    ? ({ kind: "watering.watered", on: [plant], data: { volume_mL, drained: "yes" } } as const)
    : ({
        kind: "watering.weighed",
        on: [plant],
        data: { weight_g: 300 + Math.floor(random() * 400), state: "as found" },
      } as const);
}

function faulty(direct: SyncTransport, random: () => number, hit: () => void): SyncTransport {
  const around = async <Answer>(what: string, act: () => Promise<Answer>): Promise<Answer> => {
    const draw = random();
    if (draw < 0.12) {
      hit();
      throw new Broken(`${what} dropped`);
    }
    let answer = await act();
    if (draw < 0.2) answer = await act();
    else if (draw < 0.35) {
      hit();
      throw new Broken(`reply to ${what} lost`);
    }
    return answer;
  };
  return {
    summary: (mine) => around("summary", () => direct.summary(mine)),
    entries: (texts, redacted) => {
      const sent = random() < 0.3 ? [...texts].reverse() : texts;
      return around("entries", () => direct.entries(sent, redacted));
    },
    fetch: (refs) => around("fetch", () => direct.fetch(refs)),
  };
}

function plantedIn(direct: SyncTransport, planted: Planted | undefined): SyncTransport {
  if (planted !== "forgets the last of each batch") return direct;
  return {
    ...direct,
    async entries(texts, redacted) {
      const { refused } = await direct.entries(texts.slice(0, -1), redacted);
      const stored = texts.map((text) => ({ id: JSON.parse(text).id, hash: sha256Hex(text) }));
      return { stored, refused };
    },
  };
}

async function entriesOf(store: Store): Promise<Entry[]> {
  const entries: Entry[] = [];
  for await (const texts of store.texts()) entries.push(...texts.map((text) => JSON.parse(text) as Entry));
  return entries;
}

async function refsOf(store: Store) {
  const refs = [];
  for await (const chunk of store.all()) for (const { id, hash } of chunk) refs.push({ id, hash });
  return refs;
}

async function copyOf(store: Store): Promise<Store> {
  const copy = memoryStore();
  const entries: AcceptedEntry[] = [];
  for await (const texts of store.texts())
    for (const text of texts) {
      const judged = accept(JSON.parse(text), kinds);
      if (judged.ok) entries.push(judged);
    }
  await copy.append({ entries, redacted: [] });
  return copy;
}
