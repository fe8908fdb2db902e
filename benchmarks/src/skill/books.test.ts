import { accept, acceptedKinds, kindRegistry } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { houseKinds } from "@sillwood/bench/house";
import { SKILL_SEEDS, skillRuns } from "@sillwood/simulator/skill-runs";
import { expect, it } from "vitest";

const gate = acceptedKinds(kindRegistry([...houseKinds, ...crafts.flatMap((craft) => craft.kinds)]));

it("every line of a simulated book is one that the gate lets in, of a kind that it knows", () => {
  for (const run of skillRuns({ seed: SKILL_SEEDS.A[0], pots: 40, days: 60 })) {
    for (const line of run.lines) {
      const acceptance = accept(JSON.parse(JSON.stringify(line)), gate);
      if (!acceptance.ok)
        throw new Error(`${line.kind}: ${acceptance.problems.map(({ message }) => message).join("; ")}`);
      expect(acceptance.state).toBe("known");
    }
  }
});
