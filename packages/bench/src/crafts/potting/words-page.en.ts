import type { Say } from "../../words/say.ts";

/** What only the craft's page says. */
export const pageEnglish = (say: Say) => {
  const cm = (value: number) => say.length(value);
  return {
    potSaid: (form: string, across_cm: number, wide_cm: number, depth_cm: number, volume_mL: number) =>
      `${form} pot, ${form === "round" ? cm(across_cm) : `${cm(across_cm)} × ${cm(wide_cm)}`} across, ${cm(depth_cm)} deep, ${say.volume(volume_mL)} of medium`,
    form: { round: "round", rectangular: "rectangular", oval: "oval" },
    chooseBags: "Which bags are on the shelf?",
    mixSaid: (mix: string, chance_frac: number, air_frac: number) =>
      `${mix}. Chance of ${say.percent(air_frac)} air or more after watering: about ${say.number(Math.min(9, Math.round(10 * chance_frac)))} in 10.`,
    noMix: (air_frac: number, depth: string) =>
      `No mix of these bags keeps ${say.percent(air_frac)} air in ${depth} of medium.`,
    granularOnly: (parts: string) => `Granular mixes only in this tray: ${parts}.`,
    noneAtAll:
      "A tray so low holds water whatever fills it: stand it on its edge after watering, or on a wick.",
    deeper: (depth: string) => `The same mix would do from ${depth} of medium on.`,
    airLine: (air: string, low: string, high: string) => `air after watering ${air} (${low} to ${high})`,
    waterLine: (water: string) => `holds about ${water} for the plant`,
    wetLine: (layer: string, fill: string) => `wet layer, under 10 % air: the lowest ${layer} of ${fill}`,
    wetAll: "wet layer, under 10 % air: all of it",
    airlessLine: (hours: string) => `short of air about ${hours} after each watering`,
    airlessNone: "has air at once after a watering",
    hours: (hours: number) =>
      `${say.number(Math.round(hours))} ${Math.round(hours) === 1 ? "hour" : "hours"}`,
    scoopLine: (scoop: string, dry: string) => `a scoop of ${scoop} each; ${dry} when dry`,
    days: (days: number) => `${say.number(Math.round(days))} days`,
    test: (volume: string) => [
      `Plug the holes, fill with water to the soil line: the volume, here about ${volume}.`,
      "Fill with the moist mix, soak from below overnight, top up until it glistens, weigh: full of water.",
      "Pull the plugs, let it drain an hour, weigh again: drained.",
      "If you can, dry it at about 105 °C and weigh once more. Write it as “Medium tested”.",
    ],
    warmGood: (water: string, medium: string) => `Water ${water}, medium ${medium}: warm enough.`,
    warmWait: (water: string, wanted: string, minutes: string) =>
      `Water ${water}: too cold. Let it stand to ${wanted}, about ${minutes}.`,
    warmNever: (room: string, wanted: string) =>
      `A room of ${room} does not warm it to ${wanted}: mix in warm water.`,
    mediumNote: (medium: string) => `Medium ${medium}: roots stall below 15 °C. Wait, or go on.`,
    mediumRefused: (medium: string) => `Medium ${medium}: too cold for potting work. Bring it indoors first.`,
    daySaid: (plants_n: number) =>
      `Potting day, ${say.number(plants_n)} ${plants_n === 1 ? "plant" : "plants"} on the rail.`,
    dayEmpty: "No one needs potting.",
    dayNext: (number: string, when: string, why: string) =>
      `No one needs potting. Next: ${number}, about ${when} (${why}).`,
    dueSaid: (months_n: number) => `${say.number(months_n)} months in its medium`,
    clockWater: (time: string) => `water stands till ${time}`,
    clockRoots: (time: string) => `roots back in water or medium by ${time}`,
    clockDrain: (time: string) => `drains till ${time}`,
    past: (said: string) => `${said}: past`,
    how: {
      lift: "lift or unpot over a tray; keep the fine roots wet",
      cut: (share: string) => `cut back before the wash: leave about ${share} of the leaves, or skip`,
      wash: (minutes: string) => `wash lukewarm; roots out of water ${minutes} at most`,
      roots: "take a quarter of the roots off, a third at most",
      pot: (pot: string) => `fill and settle: ${pot}`,
      soak: "water twice until it runs, the second time slowly",
      drain:
        "stand it clear, stand it on its edge once; then weigh it: the one number, it sets its full weight",
      place: "bright shade, no wind, no feed; water again only when its weight says so",
    },
    heldSaid: (works: string) => `held: ${works}`,
    until: (work: string, day: string) => `${work} until ${day}`,
    work: {
      feed: "feed",
      cut: "cut",
      spray: "spray",
      repot: "repot",
      wash: "wash",
      sell: "sell",
    } as Readonly<Record<string, string>>,
    saltLine: (refill: string, driest: string) =>
      `salts about ${refill} mS/cm just watered, ${driest} when driest`,
    nextPot: (low: string, high: string) => `next pot: ${low} to ${high} of medium`,
    nextPotNone:
      "No larger pot dries and breathes in its first month: fresh medium in the same pot, or cut it back.",
    unknownPlant: "no such plant in this book",
    pageOf: "potting has no page of that name; expected mix, day or pot",
  };
};
export type PageWords = ReturnType<typeof pageEnglish>;
