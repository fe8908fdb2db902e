/** What the inputs of the sums on sag are, in words; part of the one list of the package. */
export const beamInputWords: Readonly<Record<string, string>> = {
  at_m: "distance from the base",
  bending: "load times length squared over stiffness of the shoot",
  hung_g: "mass hung on it",
  load_N: "load across the shoot",
  loadPerLength_N_m: "load of a length",
  measured_m: "diameter as measured",
  sag_m: "sag at the weight",
  tipDiameter_m: "diameter at the tip",
};
