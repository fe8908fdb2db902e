import type { ReportRow } from "../../../tools/report.ts";

/** Collects rows and says each as it comes: a run takes minutes. */
export function rowsSaid(say: (line: string) => void) {
  const rows: ReportRow[] = [];
  return {
    rows,
    add(figure: string, value: number, unit: string, reference: string, goal: string, holds: boolean): void {
      rows.push({ figure, value, unit, reference, goal, holds });
      say(`${holds ? "  " : "! "}${figure}: ${value.toPrecision(4)} ${unit}  (${reference}; goal ${goal})`);
    },
  };
}
export type Rows = ReturnType<typeof rowsSaid>;

export const seconds = (ms: number): string => `${(ms / 1000).toFixed(2)} s`;
