import type { Person } from "../nursery/people.ts";

/** Owns the book; walks the shelf, the cold room and the yard; pours until it runs. */
export const GROWER: Person = {
  key: "grower",
  dryAt_frac: 0.52,
  goesBySurface_frac: 0.1,
  wobble_frac: 0.05,
  pours: "until it runs",
  hand_frac: 1,
  writesWalk_frac: 0.92,
  writesLook_frac: 0.2,
  saysDrained_frac: 0.95,
  emptiesSaucer_frac: 0.95,
  forgets_frac: 0.004,
  scaleStep_g: 1,
};

/** Has the south sill six days a week; pours what the label says. */
export const HELPER: Person = {
  key: "helper",
  dryAt_frac: 0.56,
  goesBySurface_frac: 0.2,
  wobble_frac: 0.06,
  pours: "jug",
  hand_frac: 1.03,
  writesWalk_frac: 0.97,
  writesLook_frac: 0.15,
  saysDrained_frac: 0.85,
  emptiesSaucer_frac: 0.85,
  forgets_frac: 0,
  scaleStep_g: 1,
};
