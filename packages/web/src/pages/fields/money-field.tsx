import type { Json } from "@sillwood/bench/book";
import { useAsk } from "../../engine/use-ask.ts";
import type { FieldShape } from "./form-shape.ts";
import { NumberField } from "./number-field.tsx";

interface MoneyFieldProps {
  readonly label: string;
  readonly field: FieldShape;
  readonly value: Json | undefined;
  readonly onValue: (value: Json | undefined) => void;
}

const digitsOf = (currency: string): number =>
  new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;

/** Prices of a unit, such as a kWh, go to the tenth of the smallest coin; what was paid is whole coins. */
const partsOf = ({ key, type }: FieldShape) => (type === "count" || key.endsWith("_minor") ? 1 : 10);

/** Money is kept in minor units and typed as it is read. */
export function MoneyField({ label, field, value, onValue }: MoneyFieldProps) {
  const { value: house } = useAsk("house", {});
  const currency = house?.site.currency ?? "EUR";
  const parts_n = partsOf(field);
  const minor = 10 ** digitsOf(currency);
  return (
    <NumberField
      label={label}
      range={{ unit: currency, min: field.min / minor, max: field.max / minor }}
      value={typeof value === "number" ? value / minor : undefined}
      onValue={(next) =>
        onValue(typeof next === "number" ? Math.round(next * minor * parts_n) / parts_n : undefined)
      }
    />
  );
}
