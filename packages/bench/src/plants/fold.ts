import type { Entry } from "../book/entry.ts";
import { foldRounds, noRounds } from "../round/round-facts.ts";
import { type Branched, withBranch } from "./branches.ts";
import type { Measured, PlantFacts } from "./facts.ts";
import { type Brought, type PlantMeasured, type Potted, plantKinds } from "./kinds.ts";

/** The facts of a plant nobody has described yet: an entry about it arrived before the one that brings it in. */
export function unmetPlant(id: PlantFacts["id"], at_ms: number): PlantFacts {
  return {
    id,
    habit: "unknown",
    broughtAt_ms: at_ms,
    medium: "unknown",
    leavesKept_frac: 1,
    photos: [],
    rounds: noRounds,
  };
}

/**
 * What the house itself learns of a plant from one entry about it. Total: kinds that are not the house's leave the
 * facts as they are, but for photos, which any entry may carry.
 */
export function foldFacts(facts: PlantFacts, entry: Entry): PlantFacts {
  const told = foldKind(facts, entry);
  if (!entry.files?.length || entry.kind === "series.part") return told;
  const photos = entry.files.map((file) => ({ file, at_ms: entry.at_ms, entry: entry.id }));
  return { ...told, photos: [...told.photos, ...photos] };
}

function foldKind(facts: PlantFacts, entry: Entry): PlantFacts {
  const { at_ms } = entry;
  switch (entry.kind) {
    case plantKinds.brought.kind: {
      const { pot, medium, spot, ...rest } = entry.data as unknown as Brought;
      return {
        ...facts,
        ...defined(rest),
        ...(rest.number === undefined ? {} : { numberedAt: numberedAt(entry) }),
        ...(pot ? { pot } : {}),
        medium: medium ?? "unknown",
        pottedAt_ms: at_ms,
        ...(spot ? { spot, movedAt_ms: at_ms } : {}),
        broughtAt_ms: at_ms,
      };
    }
    case plantKinds.numbered.kind:
      return { ...facts, number: (entry.data as { number: number }).number, numberedAt: numberedAt(entry) };
    case plantKinds.described.kind:
      return { ...facts, ...defined(entry.data as Partial<PlantFacts>) };
    case plantKinds.potted.kind: {
      const { pot, medium } = entry.data as unknown as Potted;
      return { ...facts, ...(pot ? { pot } : {}), medium, pottedAt_ms: at_ms };
    }
    case plantKinds.moved.kind:
      return { ...facts, spot: (entry.data as { to: string }).to, movedAt_ms: at_ms };
    case plantKinds.measured.kind: {
      const measured = entry.data as PlantMeasured;
      const stamped = Object.fromEntries(
        Object.entries(defined(measured)).map(([name, value]) => [
          name,
          { value, at_ms, entry: entry.id } as Measured<unknown>,
        ]),
      );
      return { ...facts, ...stamped, ...(measured.leaves_n === undefined ? {} : { leavesKept_frac: 1 }) };
    }
    case plantKinds.branched.kind: {
      const branches = withBranch(facts.branches ?? {}, entry.data as unknown as Branched, at_ms, entry.id);
      return { ...facts, branches };
    }
    case plantKinds.ended.kind:
      return {
        ...facts,
        ended: { how: (entry.data as { how: NonNullable<PlantFacts["ended"]>["how"] }).how, at_ms },
      };
    case plantKinds.reopened.kind: {
      const { ended: _ended, ...open } = facts;
      return open;
    }
    default: {
      const rounds = foldRounds(facts.rounds, entry);
      return rounds === facts.rounds ? facts : { ...facts, rounds };
    }
  }
}

const numberedAt = ({ at_ms, clock, id }: Entry) => `${String(at_ms).padStart(16, "0")}/${clock}/${id}`;

/** Leaves out keys that are present but undefined. */
function defined<T extends object>(value: T): { [Key in keyof T]: Exclude<T[Key], undefined> } {
  return Object.fromEntries(Object.entries(value).filter(([, part]) => part !== undefined)) as never;
}
