/** What people wrote down, in plain words; the book's entries are made from these by `book/`. */
export type Note = { readonly at_ms: number; readonly by: string; readonly pots: readonly number[] } & Said;

export type Look = "dry" | "light" | "drooping" | "heavy" | "moist" | "wet";

export type Said =
  | {
      readonly what: "watered";
      readonly volume_mL: number;
      readonly drained: "yes" | "no" | "unknown";
      readonly leachate_mL?: number;
      readonly way?: "poured" | "soaked";
    }
  | {
      readonly what: "weighed";
      readonly weight_g: number;
      readonly state: "as found" | "just drained";
      readonly confirmed?: true;
    }
  | { readonly what: "looked"; readonly look: Look; readonly yes: boolean }
  | { readonly what: "moved"; readonly bench: number; readonly place: number }
  | { readonly what: "measured"; readonly facts: MeasuredFacts }
  | { readonly what: "noted"; readonly text: string }
  | { readonly what: "skipped"; readonly reason: "no time" | "not sure" | "too wet" | "told to" }
  | { readonly what: "walked"; readonly bench: number; readonly minutes: number };

export interface MeasuredFacts {
  readonly height_cm?: number;
  readonly caliper_mm?: number;
  readonly leaves_n?: number;
  readonly leafLength_cm?: number;
  readonly leafWidth_cm?: number;
  readonly stage?: "seedling" | "in leaf" | "in bud" | "in flower" | "in fruit" | "at rest";
}
