import type { OptionShapes } from "./command.ts";

/** Options that every verb understands. */
export const commonOptions: OptionShapes = {
  book: { type: "string", value: "FILE|postgres://…", what: "the book; else $SILLWOOD_BOOK, else your own" },
  at: { type: "string", value: "INSTANT", what: "now is INSTANT; what happened later is unseen" },
  known: { type: "string", value: "INSTANT", what: "as known then; what was written later is hidden" },
  json: { type: "boolean", what: "one JSON object in place of text (docs/cli.md)" },
  lang: { type: "string", value: "en|de", what: "language; else $SILLWOOD_LANG, else en" },
  units: {
    type: "string",
    value: "metric|us",
    what: "units shown and typed; else $SILLWOOD_UNITS, else metric",
  },
  zone: { type: "string", value: "ZONE", what: "zone of times shown and typed; else the site's" },
  by: { type: "string", value: "WHO", what: "who writes: grower, helper or an id; else the grower" },
  help: { type: "boolean", short: "h", what: "this page" },
};
