/** The ten principal stages of the scale; peppers have no stages 3 and 4. */
export const principalStages = [
  "germination",
  "leaf development",
  "side shoots",
  "none",
  "none",
  "flower buds",
  "flowering",
  "fruit growth",
  "ripening",
  "end of life",
] as const;

export type PrincipalStage = (typeof principalStages)[number];

/**
 * Two-digit codes of the BBCH scale for solanaceous fruit as they apply to Capsicum, in our words.
 *
 * Codes 11 to 19 count leaves on the main shoot, 21 to 29 side shoots, 51 to 59 buds, 61 to 69 flowers, 71 to 79 fruits that
 * have reached their size; 81 to 89 tell the share of ripe fruits. Stages run side by side; the most advanced one is named.
 *
 * @source Feller1995: codes 00 to 59 quoted by an opened document, the later ones from memory
 */
export const bbchStages = [
  { bbch: 0, what: "dry seed" },
  { bbch: 1, what: "seed begins to swell" },
  { bbch: 3, what: "seed has swollen" },
  { bbch: 5, what: "radicle out of the seed" },
  { bbch: 7, what: "seed leaves break the seed coat" },
  { bbch: 9, what: "emergence: seed leaves break the surface" },
  { bbch: 10, what: "cotyledons open" },
  { bbch: 11, what: "first true leaf open" },
  { bbch: 12, what: "second true leaf open" },
  { bbch: 13, what: "third true leaf open" },
  { bbch: 14, what: "fourth true leaf open" },
  { bbch: 15, what: "fifth true leaf open" },
  { bbch: 19, what: "nine leaves or more on the main shoot" },
  { bbch: 21, what: "first side shoot seen" },
  { bbch: 29, what: "nine side shoots or more seen" },
  { bbch: 51, what: "first flower bud seen" },
  { bbch: 59, what: "nine flower buds or more seen" },
  { bbch: 61, what: "first flower open" },
  { bbch: 65, what: "fifth flower open" },
  { bbch: 69, what: "nine flowers or more open or past" },
  { bbch: 71, what: "first fruit has its size and form" },
  { bbch: 75, what: "fifth fruit has its size and form" },
  { bbch: 79, what: "nine fruits or more have their size and form" },
  { bbch: 81, what: "a tenth of the fruits ripe in colour" },
  { bbch: 85, what: "half of the fruits ripe in colour" },
  { bbch: 89, what: "fruits ripe in colour" },
  { bbch: 97, what: "plant dead" },
  { bbch: 99, what: "fruits picked" },
] as const;

/** The principal stage that a code belongs to. */
export const principalOf = (bbch: number): PrincipalStage => principalStages[Math.floor(bbch / 10)] ?? "none";
