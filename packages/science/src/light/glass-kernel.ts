// The bare optics of panes, for callers that have checked their arguments. Not exported by the field.

export type Slab = { readonly transmitted_frac: number; readonly reflected_frac: number };

/** Reflected share at one surface for one polarisation; both at once at right angles, where the general form is 0/0. */
function surfaces(cosine: number, refraction: number): { s: number; p: number; inner: number } {
  const sine = Math.sqrt(Math.max(0, 1 - cosine * cosine)) / refraction;
  const inner = Math.sqrt(1 - sine * sine);
  const s = ((cosine - refraction * inner) / (cosine + refraction * inner)) ** 2;
  const p = ((inner - refraction * cosine) / (inner + refraction * cosine)) ** 2;
  return { s, p, inner };
}

/** One pane, from the cosine of the angle on it and its extinction over its thickness (KL). */
export const slabOf = (cosine: number, refraction: number, extinctionDepth: number): Slab => {
  if (cosine <= 0) return { transmitted_frac: 0, reflected_frac: 1 };
  const { s, p, inner } = surfaces(cosine, refraction);
  const kept = Math.exp(-extinctionDepth / inner);
  let transmitted = 0;
  let reflected = 0;
  for (const r of [s, p]) {
    const t = (kept * (1 - r) ** 2) / (1 - r * r * kept * kept);
    transmitted += t / 2;
    reflected += (r * (1 + kept * t)) / 2;
  }
  return { transmitted_frac: transmitted, reflected_frac: reflected };
};

/** One surface only, both polarisations. */
export const surfaceReflected_frac = (cosine: number, refraction: number): number => {
  const { s, p } = surfaces(cosine, refraction);
  return (s + p) / 2;
};

/** Two layers with all reflections between them; the first is met first. */
const stacked = (first: Slab, second: Slab): Slab => {
  const between = 1 - first.reflected_frac * second.reflected_frac;
  // At grazing angles both reflect all, and nothing passes.
  if (between <= 1e-12) return { transmitted_frac: 0, reflected_frac: 1 };
  return {
    transmitted_frac: (first.transmitted_frac * second.transmitted_frac) / between,
    reflected_frac: first.reflected_frac + (first.transmitted_frac ** 2 * second.reflected_frac) / between,
  };
};

export const stackOf = (
  cosine: number,
  panes_n: number,
  refraction: number,
  extinctionDepth: number,
): Slab => {
  const one = slabOf(cosine, refraction, extinctionDepth);
  let all = one;
  for (let pane = 1; pane < panes_n; pane += 1) all = stacked(all, one);
  return all;
};

/** Normal transmittance of a pane that absorbs nothing: no pane of that index lets more through. */
export const clearest_frac = (refraction: number): number => slabOf(1, refraction, 0).transmitted_frac;

/** Extinction over thickness from the normal transmittance, by bisection. */
export const extinctionDepthOf = (normal_frac: number, refraction: number): number => {
  let [low, high] = [0, 12];
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (slabOf(1, refraction, middle).transmitted_frac > normal_frac) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Even light from a whole half space: 2 ∫ τ(θ) sin θ cos θ dθ, as an integral over cos² θ. */
export const diffuseOf_frac = (throughAt_frac: (cosine: number) => number): number => {
  const steps = 400;
  let sum = 0;
  for (let step = 0; step < steps; step += 1) sum += throughAt_frac(Math.sqrt((step + 0.5) / steps));
  return sum / steps;
};
