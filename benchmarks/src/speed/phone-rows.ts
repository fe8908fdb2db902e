import type { Rows } from "./rows.ts";
export async function phoneRows(_r: Rows, _s: number, _say: (l: string) => void): Promise<void> {}
