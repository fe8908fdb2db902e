/** lux per µmol m⁻² s⁻¹ and photons per joule, 400 to 700 nm, of a kind of light. */
type LightRatio = {
  readonly light_lx_per_umol: number;
  readonly photons_umol_J: number;
  /** range of the first, where kinds of the source differ */
  readonly low_lx_per_umol: number;
  readonly high_lx_per_umol: number;
  readonly source: string;
};

const published = (
  light_lx_per_umol: number,
  photons_umol_J: number,
  low: number,
  high: number,
): LightRatio => ({
  light_lx_per_umol,
  photons_umol_J,
  low_lx_per_umol: low,
  high_lx_per_umol: high,
  source: "ThimijanHeins1983 Table 3",
});

/** Read with a hobby spectroradiometer, ±10 %. */
const hobby = (light_lx_per_umol: number): LightRatio => ({
  light_lx_per_umol,
  photons_umol_J: 4.7,
  low_lx_per_umol: light_lx_per_umol * 0.9,
  high_lx_per_umol: light_lx_per_umol * 1.1,
  source: "a hobby spectroradiometer on an opened page, ±10 %",
});

/** Sources of light whose lux can be turned into photons. Light of red and blue diodes alone is not one of them. */
export const lightSourceRatios = {
  "sun and sky": published(54, 4.57, 54, 56.2),
  "blue sky": published(52, 4.24, 52, 54.6),
  "metal halide": published(71, 4.59, 61.5, 73),
  "high pressure sodium": published(82, 4.98, 82, 85.9),
  fluorescent: published(74, 4.59, 72, 79),
  incandescent: published(50, 5, 49, 50.3),
  "white LED": {
    light_lx_per_umol: 68,
    photons_umol_J: 4.7,
    low_lx_per_umol: 53,
    high_lx_per_umol: 75,
    source: "CIE015, middle of blue-pumped white LED; violet-pumped 53 to 57",
  },
  "white LED, CRI 80": hobby(70),
  "white LED, CRI 90": hobby(63),
} as const satisfies Readonly<Record<string, LightRatio>>;
export type LightSource = keyof typeof lightSourceRatios;

const spectrum = (light_lx_per_umol: number, photons_umol_J: number) => ({
  light_lx_per_umol,
  photons_umol_J,
});

/** Integrals of standard spectra (CIE015, as tabulated in an open-source colour library): see `lightOfSpectrum`. */
export const standardSpectra = {
  A: spectrum(50.3, 5.01),
  D55: spectrum(56.2, 4.61),
  D65: spectrum(55.5, 4.53),
  D75: spectrum(54.6, 4.47),
  FL2: spectrum(76.5, 4.53),
  FL7: spectrum(60.6, 4.48),
  FL10: spectrum(74.4, 4.49),
  FL11: spectrum(76, 4.57),
  FL12: spectrum(78.1, 4.7),
  HP1: spectrum(85.9, 4.9),
  "LED-B1": spectrum(67.1, 4.89),
  "LED-B2": spectrum(67.9, 4.85),
  "LED-B3": spectrum(69.7, 4.68),
  "LED-B4": spectrum(71.7, 4.59),
  "LED-B5": spectrum(69.4, 4.49),
  "LED-BH1": spectrum(73.3, 4.8),
  "LED-RGB1": spectrum(60.5, 4.89),
  "LED-V1": spectrum(53.1, 4.87),
  "LED-V2": spectrum(56.6, 4.66),
} as const;
