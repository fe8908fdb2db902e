import { describe, expect, it } from "vitest";
import { type Faults, playHistory } from "./history.ts";

const none: Faults = {
  dropped: 0,
  replyLost: 0,
  repeated: 0,
  reversed: 0,
  serverRestored: 0,
  phoneCloned: 0,
  bodyDamaged: 0,
};
const mixes: Record<string, Faults> = {
  "no faults": none,
  "bad network": { ...none, dropped: 0.2, replyLost: 0.2, repeated: 0.2, reversed: 0.3 },
  "server restored from a backup": { ...none, replyLost: 0.1, serverRestored: 0.05 },
  "cloned phones": { ...none, dropped: 0.1, phoneCloned: 0.04 },
  "failing disks": { ...none, replyLost: 0.1, bodyDamaged: 0.05 },
  "all at once": {
    dropped: 0.15,
    replyLost: 0.15,
    repeated: 0.1,
    reversed: 0.2,
    serverRestored: 0.03,
    phoneCloned: 0.03,
    bodyDamaged: 0.03,
  },
};
const SEEDS_n = 60;

/** Fixed in `npm test`; `npm run soak` starts elsewhere. */
const FIRST_SEED = Number(process.env["SILLWOOD_SEED"] ?? 1);

async function failingSeeds(faults: Faults, seeds_n: number): Promise<string[]> {
  const failing: string[] = [];
  for (let seed = FIRST_SEED; seed < FIRST_SEED + seeds_n; seed++) {
    const { held, lost, log } = await playHistory(seed, faults);
    if (new Set(held).size !== 1 || lost.length > 0)
      failing.push(`seed ${seed}: ${new Set(held).size} different books, lost ${lost}\n${log.join("\n")}`);
  }
  return failing;
}

describe("histories of a few devices and a server", () => {
  it.each(Object.entries(mixes))(
    `${SEEDS_n} with %s all converge and lose nothing`,
    async (_name, faults) => {
      expect((await failingSeeds(faults, SEEDS_n)).slice(0, 1)).toEqual([]);
    },
  );

  it("something happens in them", async () => {
    const { written_n, failures_n, held } = await playHistory(3, mixes["all at once"] as Faults);
    expect(written_n).toBeGreaterThan(20);
    expect(failures_n).toBeGreaterThan(3);
    expect(held[0]?.split("\n").length).toBeGreaterThan(20);
  });

  it("the same seed plays the same history", async () => {
    const faults = mixes["all at once"] as Faults;
    expect(await playHistory(5, faults)).toEqual(await playHistory(5, faults));
  });

  it("notices a server that forgets what it acknowledged", async () => {
    expect(
      (await failingSeeds({ ...none, planted: "forgets the last of each batch" }, 10)).length,
    ).toBeGreaterThan(5);
  });
});
