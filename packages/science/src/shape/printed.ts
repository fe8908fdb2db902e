/** Thermal time between two nodes of C. chinense and the base it was found on, which travel together. BiquinhoPlastochron. */
export const printedPlastochrons = {
  vegetative: { base_C: 16.8, plastochron_Cd: 43.6 },
  reproductive: { base_C: 16.7, plastochron_Cd: 64.4 },
} as const;

/** Our clock for plants indoors: the same days at 25 °C, no standstill at 18 °C. Our assumption. */
export const indoorPlastochrons = {
  vegetative: { base_C: 12, plastochron_Cd: 69 },
  reproductive: { base_C: 12, plastochron_Cd: 101 },
} as const;

/** Pepper parts in compression: stiffness, shear stiffness, Poisson's ratio, density. PepperParts2018. */
export const printedParts = {
  fruit: { stiffness_Pa: 11.52e6, shear_Pa: 4.624e6, poisson: 0.295, density_kg_m3: 601.8 },
  stem: { stiffness_Pa: 32.95e6, shear_Pa: 12.76e6, poisson: 0.291, density_kg_m3: 980.4 },
} as const;

/** Stem below the first fork. BantuKokkanti, 20 field chillies; ElizondoMonge2016, 12 greenhouse sweet peppers. */
export const printedStems = {
  fieldChilli: { stemLow_cm: 10.8, stemHigh_cm: 26.33 },
  greenhouse: {
    stemLow_cm: 25.75,
    stemHigh_cm: 36.88,
    caliperLow_mm: 12.51,
    caliperHigh_mm: 15.83,
    heightLow_m: 1.26,
    heightHigh_m: 1.71,
  },
} as const;

/** What others reached when they measured plants from photos by machine, as printed. PotPhotos2020, Zhang2016, SmallTrees2025. */
export const printedAccuracy = [
  { study: "SfM 30 images", error: 11.92, unit: "rRMSE %" },
  { study: "SfM 90 images", error: 9.49, unit: "rRMSE %" },
  { study: "paprika MVS leaf", error: 1.65, unit: "RMSE mm" },
  { study: "paprika MVS stem", error: 0.57, unit: "RMSE mm" },
  { study: "small trees CRP height", error: 34.19, unit: "rRMSE %" },
  { study: "CRP diameter", error: 69.9, unit: "rRMSE %" },
  { study: "CRP volume", error: 107.87, unit: "rRMSE %" },
  { study: "CRP branch count", error: 142.03, unit: "rRMSE %" },
] as const;

/** Leaf over ground at flowering and yield by stems kept: pruning costs yield. MendozaPerez2017. */
export const printedStemsKept = [
  { stems: "2", lai: 0.93, yield_kg_m2: 5.49 },
  { stems: "3", lai: 1.2, yield_kg_m2: 8.28 },
  { stems: "unpruned", lai: 2.75, yield_kg_m2: 10.74 },
] as const;
