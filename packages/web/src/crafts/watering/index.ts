import type { CraftScreens } from "../screens.ts";
import { WateringMark } from "./mark.tsx";
import { PotSection } from "./pot-section.tsx";

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
  foundWet: (plant) => ({ kind: "watering.looked", on: [plant], data: { look: "wet", yes: true } }),
  most_mL: (page) => {
    // A gram of water is a millilitre.
    const most = page.figures["watering"]?.["capacity_g"];
    return typeof most === "number" ? most : undefined;
  },
};
