import { refKey } from "@sillwood/bench/book";
import { storeContract } from "../src/contract.ts";
import { memoryStore } from "../src/memory/index.ts";

storeContract({
  name: "memory",
  open: async () => memoryStore(),
  async damage(store, ref) {
    const row = (store as ReturnType<typeof memoryStore>).rows.get(refKey(ref));
    if (row?.text) row.text = row.text.replace("Europe/Berlin", "Europe/Verlin");
  },
});
