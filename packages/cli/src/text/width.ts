import type { Call } from "../command.ts";

const LEAST_n = 40;
const MOST_n = 100;

/** The width in which text is set: the screen's, within what reads well. */
export const widthFor = ({ around }: Call): number => Math.min(MOST_n, Math.max(LEAST_n, around.columns_n));
