import fc from "fast-check";
import { Temporal } from "temporal-polyfill";

// The same cases on every machine and every run; `npm run soak` names fresh seeds and more cases.
const SEED = Number(process.env["SILLWOOD_SEED"] ?? 20_261_125);
fc.configureGlobal({ seed: SEED });

// Node 20 has no Temporal, and browsers bring their own: tests see the same calls as the app does.
if (!("Temporal" in globalThis)) {
  Object.defineProperty(globalThis, "Temporal", { value: Temporal, configurable: true, writable: true });
}
