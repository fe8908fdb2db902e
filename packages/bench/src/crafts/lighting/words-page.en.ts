import type { Say } from "../../words/say.ts";
import type { PageOnlyWords } from "./words-page-shape.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** English sentences that only the page of benches and light says. */
export function pageEnglish(say: Say): PageOnlyWords {
  const hours = (value: number) => `${say.number(value, 2)} h`;
  const lamp = (lamp_h: number | undefined) => (lamp_h === undefined ? "" : `: ${hours(lamp_h)} lamp`);
  const pots = (count: number) => (count === 1 ? "1 pot" : `${count} pots`);
  const days = (value: number) =>
    Math.round(value) === 1 ? "1 day" : `${say.number(Math.round(value))} days`;
  return {
    glazing: {
      single: "single glass",
      double: "double glass",
      triple: "triple glass",
      "double low-e": "double heat-saving glass",
      "triple low-e": "triple heat-saving glass",
    },
    month: (month) => MONTHS[month - 1] as string,
    dateBand: (date, low, high) => `${date} (${low} to ${high})`,
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
    debt: {
      said: (debt, outSince, catchUp) =>
        [
          outSince === undefined
            ? `${debt} mol behind over two weeks.`
            : `${debt} mol behind; the lamp is out since ${outSince}.`,
          catchUp ? `${catchUp.hours} of lamp a day make it up in about ${days(catchUp.days)}.` : "",
        ]
          .filter(Boolean)
          .join(" "),
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
    seats: {
      better: (first) => `Better seat: ${first}`,
      best: "Every pot stands where it stands best this month.",
      few: "Too few pots to change seats.",
      swap: (number, other, before, after, otherEnough) =>
        `${number} and ${other} swap: ${number} gets ${after} instead of ${before}, ${other} ${otherEnough ? "still has enough" : "can spare it"}.`,
      move: (number, to, before, after) => `${number} to ${to}: ${after} instead of ${before}.`,
      gain: (gain) => `${gain} mol a day more need met`,
    },
    worth: {
      pair: (spot, time, change) =>
        `Worth ${time}: lux at ${spot}, then outdoors, under an evenly grey sky. ${change}`,
      lamp: (spot, time, change) => `Worth ${time}: light under the lamp at ${spot}. ${change}`,
      dates: (now, then) => `Short from ${now} would become about ${then}.`,
      light: (now, then) => `${now} mol a day would become about ${then}.`,
    },
    caution: {
      water:
        "Water and mains: a protected outlet, a drip loop in the cable, nothing wired above pots that are watered. Unplug before misting.",
      eyes: "Do not look into lit LED arrays.",
      load: (power_W) =>
        `Up to ${power_W} W on one bench: no chains of extension leads, at most four fifths of what the circuit bears.`,
      tooClose: (bench, distance) =>
        `The lamp of ${bench} hangs closer than ${distance}: hold a hand at leaf height for half a minute; raise it if that is hot.`,
      hot: "Sodium and halide lamps are hot: far from curtains and leaves, glass whole, hung from two points.",
      sun: "Never look at the sun to find a direction.",
    },
    working: {
      monthLight: (month) => `daily light in ${month}`,
      monthFormula: "window + lamp + sky, mean of the days of the season",
      monthSum: (window, lamp, sky, all) => `${window} + ${lamp} + ${sky} = ${all} mol/m²d`,
      bandNote: (dull, sunny) => `Two days in ten are duller than ${dull}, two are brighter than ${sunny}.`,
      doubt: "doubt about the place",
      doubtFrom: "glass, distance, what stands opposite, lamp; one standard deviation",
      short: "when light is short",
      shortFormula: "dates between which the usual daily light stays below the least that is needed",
      shortSum: (darkest, low, high, need) =>
        `${darkest} (${low} to ${high}) in the darkest month, ${need} needed`,
      darkest: (month) => `light in ${month}`,
      dates: (from, until) => `From ${from}, until ${until}: the ranges come from the doubt about the place.`,
      before: (was, read) => `Before the last reading (${read}): ${was}.`,
      notWeather: "A dull or bright week may move it by a few days; that is not in the range.",
      lampTooLong: (wanted, cap, endless) =>
        endless
          ? `This lamp cannot close the gap in the darkest month; its kind bears a day of ${cap}.`
          : `${wanted} of this lamp would close the gap in the darkest month, but its kind bears a day of ${cap}: a stronger lamp, or another seat.`,
      lightAt: (number, spot) => `light for ${number} at ${spot}`,
      needOf: (number) => `light aimed at for ${number}`,
      seat: "better seat",
      seatFormula: "need not met before − after, summed over the pots that move",
      seatSum: (pots, gain) =>
        `${pots.map(({ number, before, after }) => `${number}: ${before} → ${after}`).join("; ")}; gain ${gain}`,
      sourceSeat: "assignment problem, Kuhn 1955; weights our assumption",
      seatNote:
        "Missing light counts in full, too much of it a tenth, an hour of lamp past its longest day one mole.",
      worth: "the reading worth most",
      worthFormula: "doubt now against doubt with this reading in the book, if it came out as expected",
      worthSum: (now, then) => `±${now} → ±${then}`,
      lightHere: "light there today",
      sourceWorth: "our assumption: a pair halves what geometry, glass and sky model leave open",
      worthNote:
        "A pair counts best under an evenly grey sky, both readings within two minutes, the meter level.",
      worthLampNote: "At leaf height, the meter level, daylight kept out; nobody leans over it.",
    },
  };
}
