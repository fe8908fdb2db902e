import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { run } from "../src/run.ts";

/** A person at a shell of their own: a temporary home, a clock that stands where it is put, dice that are seeded. */
export function shell(start_ms = Date.UTC(2026, 2, 12, 8)) {
  const home = mkdtempSync(join(tmpdir(), "sillwood-cli-"));
  let now_ms = start_ms;
  let dice = 1;
  const random = () => {
    dice = (Math.imul(dice, 1_664_525) + 1_013_904_223) >>> 0;
    return dice / 4_294_967_296;
  };
  const around = {
    now_ms: () => now_ms,
    random,
    env: {},
    cwd: home,
    home,
    zone: "Europe/Berlin",
    columns_n: 80,
    input: async () => "",
    stopped: async () => undefined,
  };
  return {
    home,
    around,
    at(ms: number) {
      now_ms = ms;
    },
    get now_ms() {
      return now_ms;
    },
    async run(...argv: string[]) {
      let out = "";
      let err = "";
      now_ms += 1000;
      const code = await run(argv, {
        out: (text) => {
          out += text;
        },
        err: (text) => {
          err += text;
        },
        ...around,
      });
      return { code, out, err, json: <Shape = Record<string, unknown>>() => JSON.parse(out) as Shape };
    },
  };
}
