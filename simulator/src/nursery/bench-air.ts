/** Air and light on one bench, hour by hour; the hidden truth, not what anybody wrote down. */
export interface BenchAir {
  readonly from_ms: number;
  readonly hours_n: number;
  readonly outdoors: boolean;
  readonly pressure_kPa: number;
  /** [hour] */
  readonly air_C: Float64Array;
  readonly vapour_kPa: Float64Array;
  readonly wind_m_s: Float64Array;
  readonly ppfd_umol_m2_s: Float64Array;
  /** Short-wave radiation that a leaf in full view takes up. */
  readonly absorbed_W_m2: Float64Array;
  readonly rain_mm_h: Float64Array;
  /** Index of the local day, [hour]. */
  readonly dayOf: Uint16Array;
  /** Day noise shared by all pots of the bench, [day]. */
  readonly whims: Float64Array;
  /** Share of the rain on the rim that gets past the leaves. */
  readonly throughfall_frac: number;
  /** Light of each spot where spots differ; the columns above are then the mean of the bench. */
  readonly spots?: readonly SpotLight[];
}

/** Light at one spot of a bench, [hour]. */
export interface SpotLight {
  /** What a level meter among the crowns would read. */
  readonly level_umol_m2_s: Float64Array;
  /** On the mean outer leaf. */
  readonly ppfd_umol_m2_s: Float64Array;
  readonly absorbed_W_m2: Float64Array;
}

/** Empty hours for a builder to fill. */
export function emptyAir(from_ms: number, hours_n: number) {
  const column = () => new Float64Array(hours_n);
  return {
    from_ms,
    hours_n,
    air_C: column(),
    vapour_kPa: column(),
    wind_m_s: column(),
    ppfd_umol_m2_s: column(),
    absorbed_W_m2: column(),
    rain_mm_h: column(),
    dayOf: new Uint16Array(hours_n),
  };
}

/** Light over a day at a spot with a share of the bench's light, mol m⁻² d⁻¹. */
export function dailyLight_mol_m2_d(air: BenchAir, day: number, light_frac: number): number {
  let sum_umol = 0;
  for (let i = 0; i < air.hours_n; i++)
    if (air.dayOf[i] === day) sum_umol += (air.ppfd_umol_m2_s[i] as number) * 3600;
  return (sum_umol * light_frac) / 1e6;
}

/** The same on a level meter at one spot, [day]. */
export function spotDailyLight_mol_m2_d(air: BenchAir, spot: SpotLight, days_n: number): number[] {
  const sums_umol = new Array<number>(days_n).fill(0);
  for (let i = 0; i < air.hours_n; i++) {
    const day = air.dayOf[i] as number;
    if (day < days_n) sums_umol[day] = (sums_umol[day] ?? 0) + (spot.level_umol_m2_s[i] as number) * 3600;
  }
  return sums_umol.map((sum) => sum / 1e6);
}
