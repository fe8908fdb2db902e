import type { Say } from "./say.ts";

/** A sentence not yet said: language and units are those of whoever asks, and nobody pays for it who does not. */
export type Said = (say: Say) => string;
