import * as v from "valibot";
import { choice, count, day, quantity, text } from "../book/fields.ts";
import type { EntryKind } from "../book/kinds.ts";
import type { Say } from "../words/say.ts";
import { analysed, labelled } from "./label.ts";

/** What is on hand, and the unit in which it is counted. */
const supplyWhat = ["medium", "pots", "feed", "treatment", "labels", "water", "other"] as const;
const unit = choice("unit", ["mL", "g", "pieces"]);

const boughtSchema = v.strictObject({
  name: text("name of the supply", 80),
  what: choice("what it is", supplyWhat),
  amount: quantity("amount", "", 0.001, 1e7),
  unit,
  price_minor: v.optional(count("price", 0, 100_000_000)),
  currency: v.optional(
    v.pipe(text("currency", 3), v.regex(/^[A-Z]{3}$/, "currency is not a code of three capitals as EUR")),
  ),
  lot: v.optional(text("lot", 60)),
  expires: v.optional(day("expiry date")),
});
export type SupplyBought = v.InferOutput<typeof boughtSchema>;
const amountSchema = v.strictObject({
  amount: quantity("amount", "", 0, 1e7),
  why: v.optional(text("why", 200)),
});
export type SupplyAmount = v.InferOutput<typeof amountSchema>;

const said = (say: Say, english: string, german: string) => (say.language === "de" ? german : english);
/** In the reader's units; pieces are pieces everywhere. */
const amountSaid = ({ amount, unit: counted }: Pick<SupplyBought, "amount" | "unit">, say: Say) =>
  counted === "mL"
    ? say.volume(amount)
    : counted === "g"
      ? say.mass(amount)
      : `${say.number(amount)} ${said(say, "pieces", "Stück")}`;
const supply = { v: 1, subject: "supply", onMin_n: 1 } as const;

export const supplyKinds = {
  labelled,
  analysed,
  bought: {
    ...supply,
    // Prices are the grower's own affair.
    readers: "grower",
    kind: "supply.bought",
    schema: boughtSchema,
    sentence: (data, say) => {
      const price =
        data.price_minor === undefined
          ? ""
          : said(
              say,
              ` for ${say.money(data.price_minor, data.currency ?? "EUR")}`,
              ` für ${say.money(data.price_minor, data.currency ?? "EUR")}`,
            );
      return said(
        say,
        `bought ${amountSaid(data, say)} of ${data.name}${price}`,
        `${amountSaid(data, say)} ${data.name} gekauft${price}`,
      );
    },
    effects: (data, entry) =>
      entry.on.map((id) => ({ effect: "supply in", supply: id, amount: data.amount })),
    example: {
      name: "peat mix",
      what: "medium",
      amount: 40_000,
      unit: "mL",
      price_minor: 1290,
      currency: "USD",
      lot: "A7",
      expires: "2028-01-31",
    },
  } satisfies EntryKind<SupplyBought>,
  used: {
    ...supply,
    readers: "all",
    kind: "supply.used",
    schema: amountSchema,
    sentence: (data, say) =>
      said(
        say,
        `used ${data.amount}${data.why ? `: ${data.why}` : ""}`,
        `${data.amount} verbraucht${data.why ? `: ${data.why}` : ""}`,
      ),
    effects: (data, entry) =>
      entry.on.map((id) => ({ effect: "supply out", supply: id, amount: data.amount })),
    example: { amount: 700, why: "repotting 118" },
  } satisfies EntryKind<SupplyAmount>,
  counted: {
    ...supply,
    readers: "all",
    kind: "supply.counted",
    schema: amountSchema,
    sentence: (data, say) => said(say, `counted: ${data.amount} left`, `gezählt: noch ${data.amount}`),
    effects: () => [],
    example: { amount: 12_500 },
  } satisfies EntryKind<SupplyAmount>,
  thrown: {
    ...supply,
    readers: "all",
    kind: "supply.thrown",
    schema: amountSchema,
    sentence: (data, say) =>
      said(
        say,
        `${data.amount} thrown away${data.why ? `: ${data.why}` : ""}`,
        `${data.amount} weggeworfen${data.why ? `: ${data.why}` : ""}`,
      ),
    effects: (data, entry) =>
      entry.on.map((id) => ({ effect: "supply out", supply: id, amount: data.amount })),
    example: { amount: 200, why: "mouldy" },
  } satisfies EntryKind<SupplyAmount>,
} as const;
