import fc from "fast-check";
import { Temporal } from "temporal-polyfill";

// Node 20 has no Temporal, and browsers bring their own: tests see the same calls as the app does.
if (!("Temporal" in globalThis)) {
  Object.defineProperty(globalThis, "Temporal", { value: Temporal, configurable: true, writable: true });
}

// The same cases on every machine and every run; fresh ones are drawn by `npm run soak`.
fc.configureGlobal({ seed: 20_261_125 });
