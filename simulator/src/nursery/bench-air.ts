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
