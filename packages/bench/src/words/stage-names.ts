import type { Say } from "./say.ts";

const GERMAN: Readonly<Record<string, string>> = {
  seedling: "Sämling",
  "in leaf": "im Laub",
  "in bud": "in Knospe",
  "in flower": "in Blüte",
  "in fruit": "mit Früchten",
  "at rest": "in Ruhe",
};

/** What a person calls a stage of growth. */
export const stageSaid = (stage: string, say: Say): string =>
  say.language === "de" ? (GERMAN[stage] ?? stage) : stage;
