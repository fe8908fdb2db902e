import type { Say } from "../../words/say.ts";
import type { LightingWords } from "./words-shape.ts";

/** English sentences of the page of benches and light, of lamps and of readings. */
export function pageEnglish(say: Say): Pick<LightingWords, "page" | "lamp" | "check"> {
  const hours = (value: number) => `${say.number(value, 2)} h`;
  const lamp = (lamp_h: number | undefined) => (lamp_h === undefined ? "" : `: ${hours(lamp_h)} lamp`);
  const pots = (count: number) => (count === 1 ? "1 pot" : `${count} pots`);
  return {
    page: {
      noBench: "No bench yet. A windowsill is a bench.",
      noPlants: "No plant stands on a bench yet.",
      head: (short_n, plants_n, month) =>
        short_n === 0
          ? `Light is enough at all ${pots(plants_n)} in ${month}.`
          : `Light is short at ${short_n} of ${pots(plants_n)} in ${month}.`,
      setLamp: (bench, said) => `${bench}: ${said}.`,
      openSky: "open sky",
      noWindow: "no window written",
      lampOnly: "lamp, no window",
      window: (faces, glass) =>
        `window ${faces}${glass === undefined ? ", size and glass guessed" : `, ${glass}`}`,
      guessedWindow: (faces) => `a window facing ${faces}, its size and glass guessed`,
      spot: (spot, number, light, need, days) =>
        `Spot ${spot}, pot ${number}: ${light} of ${need} needed${days === undefined ? "" : `, ${days}`}.`,
      freeSpot: (spot, light, days) =>
        `Spot ${spot}, free: ${light}${days === undefined ? "" : `, ${days}`}.`,
      fromTo: (dull, sunny) => `from ${dull} to ${sunny}`,
      enoughAllYear: "enough all year",
      shortAllYear: (lamp_h) => `short all year${lamp(lamp_h)}`,
      shortFrom: (from, until, lamp_h) => `short ${from} to ${until}${lamp(lamp_h)}`,
      was: (from, until) => `short from ${from} until ${until}`,
      wasSo: (said) => said,
      bench: (worst, short_n, plants_n) =>
        `${worst}; ${short_n} of ${pots(plants_n)} short at some time of the year`,
      allFree: "no plant stands here",
      turned: (since_d, side_frac) =>
        `not turned for ${Math.round(since_d) === 1 ? "1 day" : `${say.number(since_d)} days`}, ${say.percent(side_frac)} of the light from one side`,
      unsure: "Which way the window faces is not written: two cases.",
      caseSaid: (faces) => `if it faces ${faces}`,
      noonAsk: (bright_lux, bright, dim_lux, dim) =>
        `Read lux at the leaf at noon of a clear day: near ${bright_lux} is a ${bright} window, near ${dim_lux} a ${dim} one.`,
    },
    lamp: {
      set: (on, off, hours_h) => `lamp ${on} to ${off}, ${hours(hours_h)}`,
      stayOff: "lamp off: daylight is enough",
      out: "the lamp is out",
      outSince: (day) => `out since ${day}`,
      isSet: (on, off, hours_h, written) =>
        `${written ? "set" : "taken as set"} ${on} to ${off}, ${hours(hours_h)}`,
      isOff: "set to stay off",
      near: (difference) => `a change of ${difference} mol a day is not worth a hand`,
      onceAWeek: (since_d) =>
        `set ${since_d < 1 ? "today" : `${say.number(Math.max(1, Math.floor(since_d)))} d ago`}: at most one change a week`,
      short: (short, cap_h, wanted) =>
        `${short} mol a day stay open within a day of ${hours(cap_h)}${wanted === undefined ? "" : `; ${wanted} µmol/m²s at the leaves would do`}.`,
      energy: (kWh_d, cost, perPlant) =>
        `${kWh_d} kWh a day${cost === undefined ? "" : `, ${cost}`}${perPlant === undefined ? "" : `; ${perPlant} a plant and month`}`,
      ask: (bench, on, off, now) => `Set the lamp of ${bench}: ${on} to ${off}. Now ${now}.`,
      askOff: (bench, now) => `Switch off the lamp of ${bench}: daylight is enough. Now ${now}.`,
      isSetNow: "It is set",
    },
    check: {
      brighterThanSky: (inside, most) =>
        `Indoor reading is brighter than the sky can be now (${inside} of ${most}). Lamp on, or meters swapped?`,
      brighterInside: (inside, outside) =>
        `Brighter inside than outside (${inside} and ${outside}). Lamp on, or the two swapped?`,
      outsideTooBright: (outside, most) =>
        `Outdoors ${outside}; a clear sky gives at most ${most} now. Another unit, or the clock?`,
      sunDown: "The sun is down: a pair needs daylight. Lamp on, or the clock?",
      lowSun: "The sun is hardly up: a pair counts best with the sun higher. Read again later?",
      notGrey: (outside) => `${outside} is too bright for an evenly grey sky. Was it broken?`,
      swapped: "Swap them",
      wasBroken: "It was broken",
      asRead: "Keep as read",
      noWindow: "No window is written here: the pair is kept and tells nothing yet.",
      noLamp: "No lamp is written here: nothing to compare with.",
      redAndBlue: "Lux says nothing of red and blue light. Read it in µmol/m²s.",
      darker: (read, modelled) =>
        `${read} of the light outdoors; the window as written gives ${modelled}. A tree, a balcony, a curtain, dirty glass, or another size?`,
      brighter: (read, modelled) =>
        `${read} of the light outdoors; the window as written gives ${modelled}. Sun between the readings, shade outdoors, or another direction (a compass shows magnetic north)?`,
      good: (read, modelled) => `${read} of the light outdoors; the window as written gives ${modelled}.`,
      lampOff: (read, modelled) =>
        `${read} µmol/m²s; the lamp as written gives ${modelled}. Height, power, or the meter?`,
      lampGood: (read, modelled) => `${read} µmol/m²s; the lamp as written gives ${modelled}.`,
      then: (light, range, spell) =>
        `Then ${light} mol a day (${range})${spell === undefined ? "" : `, ${spell}`}.`,
    },
  };
}
