import type { CraftScreens } from "../screens.ts";
import { WateringMark } from "./mark.tsx";
import { PotSection } from "./pot-section.tsx";

/** What each sign of the desk is as a look. Drooping first: what the hands feel then says from what it hangs. */
const LOOK_OF_SIGN = [
  ["droops", "drooping"],
  ["heavy pot", "heavy"],
  ["light pot", "light"],
  ["wet medium", "wet"],
  ["dry medium", "dry"],
] as const;

export const watering: CraftScreens = {
  mark: WateringMark,
  atThePot: PotSection,
  weighed: (plant, weight_g, isConfirmed) => ({
    kind: "watering.weighed",
    on: [plant],
    data: { weight_g, state: "as found", ...(isConfirmed ? { confirmed: true } : {}) },
  }),
  watered: (plant, volume_mL) => ({
    kind: "watering.watered",
    on: [plant],
    data: { volume_mL, drained: "unknown" },
  }),
  seen: (plant, signs) =>
    LOOK_OF_SIGN.filter(([sign]) => signs.includes(sign)).map(([, look]) => ({
      kind: "watering.looked",
      on: [plant],
      data: { look, yes: true },
    })),
  foundWet: (plant) => ({ kind: "watering.looked", on: [plant], data: { look: "wet", yes: true } }),
  most_mL: (page) => {
    // A gram of water is a millilitre.
    const most = page.figures["watering"]?.["capacity_g"];
    return typeof most === "number" ? most : undefined;
  },
};
