import { kindRegistry } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { houseKinds } from "@sillwood/bench/house";
import { hashToken, pairings } from "@sillwood/server/access";
import { createApp } from "@sillwood/server/app";
import { listen } from "@sillwood/server/listen";
import { openPostgres } from "@sillwood/store/postgres";
import { openSqlite } from "@sillwood/store/sqlite";
import { testRegistry } from "../../../packages/bench/test/entry-maker.ts";
import { crowdId, crowdKey } from "./crowd-keys.ts";

/**
 * Serves a book until it is killed: the first line says where, the second where paired devices come in.
 * CROWD=N lets so many phones in beforehand. PLANTED=forgets answers before it writes, to see the trial notice.
 */
const [place] = process.argv.slice(2) as [string];
const opened = place.startsWith("postgres:")
  ? await openPostgres({ url: place, book: "main" })
  : await openSqlite({ path: place, book: "main" });
const forgets = process.env["PLANTED"] === "forgets";
const store = forgets
  ? {
      ...opened,
      append: async (batch: Parameters<typeof opened.append>[0]) => {
        setTimeout(() => void opened.append(batch).catch(() => undefined), 400);
        return {
          stored: batch.entries.map(({ entry, hash }) => ({ id: entry.id, hash })),
          added_n: batch.entries.length,
          setAside: [],
        };
      },
    }
  : opened;
const kinds = kindRegistry([
  ...houseKinds,
  ...crafts.flatMap((craft) => craft.kinds),
  ...testRegistry.all.filter(({ kind }) => kind.startsWith("test.")),
]);
// A crowd of phones that were let in long ago: their keys are known to the trial.
for (let i = 0; i < Number(process.env["CROWD"] ?? 0); i++) {
  const [hash, device, person] = [hashToken(crowdKey(i)), crowdId(i), crowdId(i)];
  const [made_ms, seen_ms] = [Date.now(), Date.now()];
  await opened.keys.add({ hash, device, person, role: "helper", name: `phone ${i}`, made_ms, seen_ms });
}
const codes = pairings();
const options = { store, kinds, codes };
const own = await listen(createApp(options), { port: 0 });
const outer = await listen(createApp({ ...options, door: "paired devices" }), { port: 0 });
process.stdout.write(`${own.url}\n${outer.url}\n`);
process.once("SIGTERM", () => process.exit(0));
