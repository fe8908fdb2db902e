/** How a bare surface dries; mm of water lost from its top layer. */
export interface SurfaceLayer {
  /** Lost without slowing down (readily evaporable water), mm. */
  readonly ready_mm: number;
  /** Lost when it has ceased (total evaporable water), mm. */
  readonly total_mm: number;
}

/**
 * Share of the wet rate at which a drying surface still evaporates (O6).
 *
 * Kr = 1 up to REW, then falls in a straight line to 0 at TEW
 *
 * @param lost_mm water lost from the top layer since it was wet [mm], 0 or more
 * @param layer ready and total evaporable water [mm], total above ready
 * @returns share, 0 to 1
 * @source FAO56 eq. 74
 * @example surfaceShare(10, { ready_mm: 6, total_mm: 14 }) // 0.5
 */
export function surfaceShare(lost_mm: number, layer: SurfaceLayer): number {
  if (lost_mm <= layer.ready_mm) return 1;
  return Math.max(0, (layer.total_mm - lost_mm) / (layer.total_mm - layer.ready_mm));
}
