/** A function's name as words: `dailyVapourPressure_kPa` is "daily vapour pressure". */
export function sumName(name: string): string {
  const words = (name.split("_")[0] ?? name)
    .replace(/([a-z0-9])([A-Z])/g, "$1 $2")
    .replace(/([a-z])(\d)/g, "$1 $2");
  return words.toLocaleLowerCase().replace(/\bet\b/g, "ET");
}
