import type { Chance } from "../nursery/chance.ts";

/** How the growers of a run know their light and air. */
export interface Tools {
  /** A meter that sums a day's light, a phone that shows lux, or nothing. */
  readonly light: "sum" | "lux" | "none";
  /** What the meter shows over what is; a phone without a diffuser is off by a third as often as not. */
  readonly meter: number;
  /** A logger, now and then a thermometer, the setting of the thermostat written once, or nothing; for each bench. */
  readonly air: readonly ("logger" | "read" | "setting" | "none")[];
  readonly readEvery_d: number;
}

/** Draws what hangs on the wall. @source our assumption: loggers are cheap by now, light meters are rare */
export function drawTools(chance: Chance): Tools {
  const light = chance.pick(["sum", "sum", "sum", "lux", "lux", "lux", "none", "none"] as const);
  const air = () =>
    chance.pick(["logger", "logger", "read", "read", "read", "setting", "setting", "none"] as const);
  return {
    light,
    meter: chance.logNormal(1, light === "lux" ? 0.3 : 0.12),
    air: [air(), air()],
    readEvery_d: chance.whole(14, 60),
  };
}
