import { unitOfName } from "./unit-of-name.ts";

/**
 * The words that a camelCase name stands for, for messages and lists.
 *
 * A name in °C that does not say what it is gets the word "temperature": `air_C` is the air temperature.
 *
 * @param name a name with or without a unit suffix
 * @returns lower-case words
 * @source our assumption
 * @example wordsOfName("air_C") // "air temperature"
 * @example wordsOfName("vapourPressure_kPa") // "vapour pressure"
 */
export function wordsOfName(name: string): string {
  const words = (name.split("_")[0] ?? name).replace(/([a-z])([A-Z0-9])/g, "$1 $2").toLowerCase();
  const saysIt = /temperature|point|bulb|difference|rise|range/.test(words);
  return unitOfName(name) === "°C" && !saysIt ? `${words} temperature` : words;
}
