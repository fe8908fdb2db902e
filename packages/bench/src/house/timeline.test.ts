import { expect, it } from "vitest";
import { plantId, seeded, testLedger, testPen } from "../../test/toy.ts";
import type { PlantEvent, PlantState, Runner } from "./plant-run.ts";
import { timeline } from "./timeline.ts";

const PLANT = plantId(1);
const EVENTS_n = 300;

/** A runner that remembers the order of everything it was shown, and how much work it was. */
function recorder() {
  const seen = { steps_n: 0 };
  const runner: Runner = {
    happen(state, { entry }) {
      seen.steps_n++;
      const before = (state?.slices[0] as readonly string[] | undefined) ?? [];
      return {
        at_ms: entry.at_ms,
        facts: {},
        slices: [[...before, entry.id]],
        problems: [],
      } as unknown as PlantState;
    },
    advance: (state) => state,
    sight: () => {
      throw new Error("nobody looks here");
    },
  };
  return { runner, seen };
}

function someEvents(): PlantEvent[] {
  const ledger = testLedger();
  const pen = testPen(ledger);
  return Array.from({ length: EVENTS_n }, (_, i) => {
    const entry = pen.at(i, { kind: "plant.noted", on: [PLANT], data: { text: `note ${i}` } });
    return { entry, kind: ledger.kinds.find("plant.noted") as PlantEvent["kind"] };
  });
}

const all = () => true;
const orderOf = (state: PlantState | undefined) => state?.slices[0];

it("gives the same from checkpoints as from nothing, wherever a long history is put right", () => {
  const random = seeded(7);
  const { runner } = recorder();
  const events = someEvents();
  const line = timeline(PLANT);
  const later: PlantEvent[] = [];
  const held: PlantEvent[] = [];
  for (const event of events) (random() < 0.3 ? later : held).push(event);
  for (const event of held) line.insert(event);
  line.last(runner, all);
  const inOrder = () => line.events().map(({ entry }) => entry.id);
  for (const event of later) {
    line.insert(event);
    if (random() < 0.5) line.remove((events[Math.floor(random() * EVENTS_n)] as PlantEvent).entry.id);
    expect(orderOf(line.last(runner, all))).toEqual(inOrder());
  }
});

it("runs only a little again after the latest events, and at most a stretch after old ones", () => {
  const { runner, seen } = recorder();
  const events = someEvents();
  const line = timeline(PLANT);
  const late = [events[EVENTS_n - 10], events[100]] as PlantEvent[];
  for (const event of events) if (!late.includes(event)) line.insert(event);
  line.last(runner, all);
  seen.steps_n = 0;
  line.insert(late[0] as PlantEvent);
  line.last(runner, all);
  expect(seen.steps_n).toBeLessThanOrEqual(20);
  seen.steps_n = 0;
  line.insert(late[1] as PlantEvent);
  line.last(runner, all);
  expect(seen.steps_n).toBeLessThanOrEqual(EVENTS_n - 64);
});
