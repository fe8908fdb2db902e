import { checkData } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger } from "@sillwood/bench/house";
import { describe, expect, it } from "vitest";
import type { FormData } from "../fields/entry-form.tsx";
import { isWhole } from "../fields/entry-form.tsx";
import type { FieldShape } from "../fields/form-shape.ts";
import { isWritable, kindShape } from "./form-shapes.ts";

const site = {
  name: "Fernholt",
  latitude_deg: 47.6,
  longitude_deg: -122.3,
  elevation_m: 20,
  zone: "America/Los_Angeles",
  currency: "USD",
  assumed: true,
};
const kinds = createLedger({ crafts, site }).kinds.all;

/** Fields with everything that stands inside their variants. */
const allFields = (fields: readonly FieldShape[]): readonly FieldShape[] =>
  fields.flatMap((field) => [field, ...allFields(Object.values(field.variants ?? {}).flat())]);

describe("forms drawn from the schemas of the kinds", () => {
  it.each(kinds.filter((kind) => isWritable(kindShape(kind))).map((kind) => [kind.kind, kind] as const))(
    "%s: its example fills its form",
    (_name, kind) => {
      const { fields } = kindShape(kind);
      const example = kind.example as FormData;
      expect(Object.keys(example).filter((key) => !fields.some((field) => field.key === key))).toEqual([]);
      expect(isWhole(fields, example)).toBe(true);
    },
  );
  it("leaves out what no form can type and still writes the entry: leaves by their mean", () => {
    const kind = kinds.find((each) => each.kind === "growth.leaves");
    if (!kind) throw new Error("growth.leaves is not in the book");
    const shape = kindShape(kind);
    expect(isWritable(shape)).toBe(true);
    const typed = shape.fields.filter(({ type }) => type !== "other").map(({ key }) => key);
    expect(typed).toEqual(["leaves_n", "leafLength_cm", "leafWidth_cm", "measured_n"]);
    expect(checkData(kind, { leaves_n: 80, leafLength_cm: 6, leafWidth_cm: 3 })).toEqual([]);
  });
  it("gives every number its range and knows what must be said", () => {
    for (const kind of kinds) {
      for (const field of allFields(kindShape(kind).fields))
        if (field.type === "number" || field.type === "count")
          expect(field.min < field.max && Number.isFinite(field.min), `${kind.kind} ${field.key}`).toBe(true);
    }
    const watered = kinds.find(({ kind }) => kind === "watering.watered");
    if (!watered) throw new Error("no watering in the registry");
    const { fields } = kindShape(watered);
    expect(isWhole(fields, {})).toBe(false);
    expect(fields.find(({ key }) => key === "volume_mL")).toMatchObject({
      unit: "mL",
      min: 1,
      optional: false,
    });
    expect(fields.find(({ key }) => key === "leachate_mL")?.optional).toBe(true);
  });
  it("lets nobody write by form what needs a page of its own", () => {
    const writable = kinds.map(kindShape).filter(isWritable);
    for (const name of ["bench.laid", "series.part", "person.joined", "book.corrected", "plant.brought"])
      expect(writable.map(({ kind }) => kind)).not.toContain(name);
    expect(writable.map(({ kind }) => kind)).toContain("plant.potted");
  });
});
