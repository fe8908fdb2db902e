/** A container by its inside measures, in the words of the book. */
export type PotShape =
  | { readonly form: "round"; readonly top_cm: number; readonly base_cm?: number; readonly depth_cm: number }
  | {
      readonly form: "rectangular" | "oval";
      readonly length_cm: number;
      readonly width_cm: number;
      readonly depth_cm: number;
    };

/** Area of the opening, cm². */
export function opening_cm2(shape: PotShape): number {
  if (shape.form === "round") return (Math.PI / 4) * shape.top_cm ** 2;
  const box_cm2 = shape.length_cm * shape.width_cm;
  return shape.form === "oval" ? (Math.PI / 4) * box_cm2 : box_cm2;
}

/**
 * Volume of the medium up to a filling height, by slicing: the walls run straight from base to top.
 *
 * @param filled_frac filling height as a share of the depth, 0 to 1
 * @param taper_frac width at the base over width at the top where the base was not measured
 */
export function medium_mL(shape: PotShape, filled_frac: number, taper_frac: number): number {
  const base_frac = shape.form === "round" && shape.base_cm ? shape.base_cm / shape.top_cm : taper_frac;
  const slices_n = 60;
  let volume_mL = 0;
  for (let i = 0; i < slices_n; i++) {
    const up_frac = ((i + 0.5) / slices_n) * filled_frac;
    const width_frac = base_frac + (1 - base_frac) * up_frac;
    volume_mL += opening_cm2(shape) * width_frac ** 2 * ((shape.depth_cm * filled_frac) / slices_n);
  }
  return volume_mL;
}
