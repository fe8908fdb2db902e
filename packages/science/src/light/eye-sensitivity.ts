/** Sensitivity of the eye by day, V(λ) of CIE 1924, 380 to 780 nm in steps of 5 nm (CIE015, as tabulated in an open-source colour library and from memory). */
export const eyeSensitivity = {
  from_nm: 380,
  step_nm: 5,
  values_frac: [
    0.000039, 0.000064, 0.00012, 0.000217, 0.000396, 0.00064, 0.00121, 0.00218, 0.004, 0.0073, 0.0116,
    0.01684, 0.023, 0.0298, 0.038, 0.048, 0.06, 0.0739, 0.09098, 0.1126, 0.13902, 0.1693, 0.20802, 0.2586,
    0.323, 0.4073, 0.503, 0.6082, 0.71, 0.7932, 0.862, 0.91485, 0.954, 0.9803, 0.99495, 1, 0.995, 0.9786,
    0.952, 0.9154, 0.87, 0.8163, 0.757, 0.6949, 0.631, 0.5668, 0.503, 0.4412, 0.381, 0.321, 0.265, 0.217,
    0.175, 0.1382, 0.107, 0.0816, 0.061, 0.04458, 0.032, 0.0232, 0.017, 0.01192, 0.00821, 0.005723, 0.004102,
    0.002929, 0.002091, 0.001484, 0.001047, 0.00074, 0.00052, 0.000361, 0.000249, 0.000172, 0.00012,
    0.0000848, 0.00006, 0.0000424, 0.00003, 0.0000212, 0.000015,
  ],
} as const;

/** V(λ), straight between the steps; 0 outside the visible. Not exported by the field. */
export const eyeSensitivityAt_frac = (wavelength_nm: number): number => {
  const { from_nm, step_nm, values_frac } = eyeSensitivity;
  const place = (wavelength_nm - from_nm) / step_nm;
  const before = Math.floor(place);
  if (place < 0 || place > values_frac.length - 1) return 0;
  const from = values_frac[before] ?? 0;
  return from + ((values_frac[before + 1] ?? from) - from) * (place - before);
};
