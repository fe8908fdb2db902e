/**
 * What is suspicious about a reading. "refuse" means that nothing should be computed from it, "look" that it is possible
 * but unusual and must be shown beside whatever is computed.
 */
export type ScreeningNote = {
  readonly level: "refuse" | "look";
  readonly quantity: string;
  readonly what: string;
  readonly likelyCause: string;
};

const refuse = (quantity: string, what: string, likelyCause: string): ScreeningNote => ({
  level: "refuse",
  quantity,
  what,
  likelyCause,
});
const look = (quantity: string, what: string, likelyCause: string): ScreeningNote => ({
  level: "look",
  quantity,
  what,
  likelyCause,
});

const outside = (value: number, min: number, max: number): boolean => !(value >= min && value <= max);

/**
 * Look over the highest and lowest temperature of a day.
 *
 * @param day highest and lowest air temperature [°C], any value; whether the sensor is indoors
 * @returns notes, none when all is usual
 * @source our assumption
 * @example screenTemperatures({ airMax_C: 75, airMin_C: 60, indoors: true })[0].level // "refuse"
 */
export function screenTemperatures(day: {
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly indoors: boolean;
}): readonly ScreeningNote[] {
  const { airMax_C, airMin_C, indoors } = day;
  const notes: ScreeningNote[] = [];
  for (const [name, value] of [
    ["airMax_C", airMax_C],
    ["airMin_C", airMin_C],
  ] as const) {
    if (outside(value, -40, 60)) {
      notes.push(refuse(name, `${value} °C is outside -40 to 60 °C`, "°F entered as °C"));
    } else if (indoors && outside(value, 5, 45)) {
      notes.push(look(name, `${value} °C is unusual indoors`, "sensor in the sun or over a heater"));
    }
  }
  if (airMax_C < airMin_C) {
    notes.push(
      refuse(
        "airMax_C",
        `the highest (${airMax_C} °C) is below the lowest (${airMin_C} °C)`,
        "columns swapped",
      ),
    );
  } else if (airMax_C - airMin_C > 30) {
    notes.push(look("airMax_C", "the day spans more than 30 °C", "sensor in the sun or over a heater"));
  } else if (airMax_C - airMin_C < 1) {
    notes.push(look("airMax_C", "the day spans less than 1 °C", "stuck sensor"));
  }
  return notes;
}

/**
 * Look over relative humidities in hourly order.
 *
 * @param humidity_frac humidities [hour][share], any value
 * @returns notes, none when all is usual
 * @source our assumption
 * @example screenHumidity([0.5, 62])[0].likelyCause // "percent entered as a share"
 */
export function screenHumidity(humidity_frac: readonly number[]): readonly ScreeningNote[] {
  const notes: ScreeningNote[] = [];
  const bad = humidity_frac.find((value) => outside(value, 0.01, 1.05));
  if (bad !== undefined) {
    const cause = bad > 1.05 && bad <= 105 ? "percent entered as a share" : "wet or dead sensor";
    notes.push(refuse("humidity_frac", `${bad} is outside 0.01 to 1.05`, cause));
  } else if (humidity_frac.some((value) => value > 1)) {
    notes.push(look("humidity_frac", "above 1; counted as 1", "wet sensor"));
  }
  const last48 = humidity_frac.slice(-48);
  if (last48.length === 48 && last48.every((value) => value === last48[0])) {
    notes.push(look("humidity_frac", "the same for 48 hours", "dead sensor"));
  }
  return notes;
}

/**
 * Look over a dew point beside the day's temperatures.
 *
 * @param day dew point, highest and lowest air temperature [°C], any value
 * @returns notes, none when all is usual
 * @source our assumption
 * @example screenDewPoint({ dewPoint_C: 21, airMax_C: 24, airMin_C: 12 })[0].level // "refuse"
 */
export function screenDewPoint(day: {
  readonly dewPoint_C: number;
  readonly airMax_C: number;
  readonly airMin_C: number;
}): readonly ScreeningNote[] {
  const { dewPoint_C, airMax_C, airMin_C } = day;
  const mean_C = (airMax_C + airMin_C) / 2;
  if (!(dewPoint_C <= mean_C + 1)) {
    return [
      refuse("dewPoint_C", "the dew point is more than 1 °C above the mean temperature", "units mixed"),
    ];
  }
  if (dewPoint_C > airMin_C + 3) {
    return [
      look("dewPoint_C", "the dew point is more than 3 °C above the lowest temperature", "units mixed"),
    ];
  }
  return [];
}

/**
 * Look over a day's solar radiation beside what the sun could give.
 *
 * @param day solar, extraterrestrial and clear-sky radiation [MJ m⁻² d⁻¹], any value
 * @returns notes, none when all is usual
 * @source our assumption
 * @example screenSolar({ solar_MJ_m2_d: 260, extraterrestrial_MJ_m2_d: 41, clearSky_MJ_m2_d: 31 })[0].level // "refuse"
 */
export function screenSolar(day: {
  readonly solar_MJ_m2_d: number;
  readonly extraterrestrial_MJ_m2_d: number;
  readonly clearSky_MJ_m2_d: number;
}): readonly ScreeningNote[] {
  const { solar_MJ_m2_d, extraterrestrial_MJ_m2_d, clearSky_MJ_m2_d } = day;
  const cause = "W m⁻² entered as MJ m⁻² d⁻¹, latitude with the wrong sign, or the wrong day";
  if (outside(solar_MJ_m2_d, 0, 1.05 * extraterrestrial_MJ_m2_d)) {
    return [refuse("solar_MJ_m2_d", "below 0 or more than the sun gives above the air", cause)];
  }
  if (solar_MJ_m2_d > 1.1 * clearSky_MJ_m2_d) {
    return [look("solar_MJ_m2_d", "more than a tenth above a clear day", cause)];
  }
  return [];
}

/**
 * Look over a day's mean wind speed.
 *
 * @param wind_m_s wind speed at 2 m [m s⁻¹], any value
 * @returns notes, none when all is usual
 * @source our assumption
 * @example screenWind(0)[0].likelyCause // "stuck cup"
 */
export function screenWind(wind_m_s: number): readonly ScreeningNote[] {
  if (outside(wind_m_s, 0, 40)) {
    return [
      refuse("wind_m_s", `${wind_m_s} m s⁻¹ is outside 0 to 40`, "km/h or a gust entered as the mean in m/s"),
    ];
  }
  if (wind_m_s === 0) return [look("wind_m_s", "no wind all day; 0.5 m s⁻¹ is used instead", "stuck cup")];
  return [];
}
