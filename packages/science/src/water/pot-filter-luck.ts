import type { Generator } from "../chance/index.ts";
import { SCORES } from "./pot-filter-draws.ts";

/** The scores are 4096: twelve bits pick one, so that the 32 of a day's luck hold two. */
const LAST = SCORES.length - 1;
const SECOND_SHIFT = 16;

/** Key to the luck of one forecast. @param chance seeded generator @returns a whole number of 32 bits @source definition */
export const luckKey = (chance: Generator): number => chance.index(0xffff_ffff) | 0;

/** Key to the luck of one draw. @param key of the forecast @param draw its number @returns 32 bits @source as `dayLuck` */
export const drawKey = (key: number, draw: number): number => mixed(key ^ Math.imul(draw + 1, 0x9e3779b1));

/**
 * Luck of one day of one draw, by numbers alone: who comes back to it finds the same, and need not have passed the days before.
 *
 * @param key of the draw
 * @param day number of the day, from 0
 * @returns 32 bits, for `firstScore` and `secondScore`
 * @source the finalising steps of MurmurHash3 (Appleby A, public domain), from memory
 */
export const dayLuck = (key: number, day: number): number => mixed(key ^ Math.imul(day + 1, 0x85ebca77));

function mixed(word: number): number {
  let bits = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return bits ^ (bits >>> 16);
}

/** A standard normal score. @param luck of the day @returns one of `SCORES` @source definition of a quantile */
export const firstScore = (luck: number): number => SCORES[luck & LAST] as number;

/** Another, independent of the first. @param luck of the day @returns one of `SCORES` @source definition of a quantile */
export const secondScore = (luck: number): number => SCORES[(luck >>> SECOND_SHIFT) & LAST] as number;
