import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import { lightAssumptions } from "./assumptions.ts";
import {
  clearest_frac,
  diffuseOf_frac,
  extinctionDepthOf,
  slabOf,
  stackOf,
  surfaceReflected_frac,
} from "./glass-kernel.ts";

/** The glass of a window: how many panes, and one number off their label or none. */
export type Glazing = {
  /** 1 to 3 */
  readonly panes_n: number;
  /** normal visible transmittance of one pane */
  readonly paneTransmittance_frac?: number;
  /** visible transmittance of the whole unit, as on its label; scales the unit of clear panes */
  readonly unitTransmittance_frac?: number;
  readonly refraction?: number;
};

/** Glazings that a grower can name, with the usual visible transmittance of units that are not clear (from memory: ask for the label). */
export const usualGlazings = {
  single: { panes_n: 1 },
  double: { panes_n: 2 },
  triple: { panes_n: 3 },
  "double low-e": { panes_n: 2, unitTransmittance_frac: 0.75 },
  "triple low-e": { panes_n: 3, unitTransmittance_frac: 0.62 },
  "solar control": { panes_n: 2, unitTransmittance_frac: 0.5 },
  "single 5.7 mm": { panes_n: 1, paneTransmittance_frac: 0.884 },
  "grey tinted": { panes_n: 1, paneTransmittance_frac: 0.41 },
} as const satisfies Readonly<Record<string, Glazing>>;

/** What lies or hangs before the glass: share of light that passes, middle and band, all from memory. */
export const veils = {
  none: { through_frac: 1, low_frac: 1, high_frac: 1 },
  dusty: { through_frac: 0.93, low_frac: 0.9, high_frac: 0.97 },
  "insect screen": { through_frac: 0.67, low_frac: 0.6, high_frac: 0.75 },
  "net curtain": { through_frac: 0.5, low_frac: 0.3, high_frac: 0.7 },
  "frame in the opening": { through_frac: 0.77, low_frac: 0.7, high_frac: 0.85 },
} as const;

type Optics = {
  readonly panes_n: number;
  readonly refraction: number;
  readonly extinctionDepth: number;
  readonly scale_frac: number;
};

/** Checked optics of a glazing. Not exported by the field. */
export const opticsOf = (glazing: Glazing): Optics => {
  const { panes_n, unitTransmittance_frac } = glazing;
  within("panes_n", panes_n, 1, 3);
  const { paneTransmittance_frac, refraction } = valuesOf(lightAssumptions, glazing);
  within("paneTransmittance_frac", paneTransmittance_frac, 0.05, clearest_frac(refraction));
  const extinctionDepth = extinctionDepthOf(paneTransmittance_frac, refraction);
  const whole_n = Math.round(panes_n);
  if (unitTransmittance_frac === undefined) {
    return { panes_n: whole_n, refraction, extinctionDepth, scale_frac: 1 };
  }
  within("unitTransmittance_frac", unitTransmittance_frac, 0.05, 0.95);
  const clear = stackOf(1, whole_n, refraction, extinctionDepth).transmitted_frac;
  return { panes_n: whole_n, refraction, extinctionDepth, scale_frac: unitTransmittance_frac / clear };
};

/** Transmittance by the cosine of the angle on the glass. Not exported by the field. */
export const throughOf_frac = (optics: Optics, cosine: number): number =>
  optics.scale_frac *
  stackOf(cosine, optics.panes_n, optics.refraction, optics.extinctionDepth).transmitted_frac;

/**
 * Light that one pane lets through and sends back, by the angle on it (Fresnel slab).
 *
 * rs = (sin(θ2−θ)/sin(θ2+θ))², rp = (tan(θ2−θ)/tan(θ2+θ))², sin θ2 = sin θ / n; α = exp(−KL / cos θ2);
 * T = α(1−r)²/(1−r²α²), R = r(1+αT), mean of both; KL solved from the normal visible transmittance alone
 *
 * @param pane angle from the normal [°], 0 to 180 (from 90 on nothing passes); normal transmittance, 0.05 to what clear glass can have (0.917 at n 1.526); refractive index, 1.3 to 1.8
 * @returns shares transmitted and reflected
 * @throws QuantityError outside those ranges
 * @source DuffieBeckman2013 chapter 5
 * @see checks/sun-light.json 065-067
 * @example paneAtAngle({ glassAngle_deg: 60, paneTransmittance_frac: 0.883647 }).transmitted_frac // 0.804
 */
export function paneAtAngle(pane: {
  readonly glassAngle_deg: number;
  readonly paneTransmittance_frac?: number;
  readonly refraction?: number;
}): { readonly transmitted_frac: number; readonly reflected_frac: number } {
  within("glassAngle_deg", pane.glassAngle_deg, 0, 180);
  const { refraction, extinctionDepth } = opticsOf({ ...pane, panes_n: 1 });
  const cosine = pane.glassAngle_deg >= 90 ? 0 : Math.cos(pane.glassAngle_deg * rad_per_deg);
  return slabOf(cosine, refraction, extinctionDepth);
}

/**
 * Light that a window of one to three panes lets through, by the angle on the glass.
 *
 * Two panes T1 T2/(1 − R1 R2), a third the same again; a label's transmittance of the unit scales the clear unit
 *
 * @param window angle from the normal [°], 0 to 180; panes, 1 to 3; normal visible transmittance of one pane, 0.05 to what clear glass can have; of the unit on its label, 0.05 to 0.95; refractive index, 1.3 to 1.8
 * @returns share that passes
 * @throws QuantityError outside those ranges
 * @source DuffieBeckman2013 chapter 5
 * @see checks/sun-light.json 070
 * @example glazingTransmittance_frac({ glassAngle_deg: 70, panes_n: 2 }) // 0.54
 */
export function glazingTransmittance_frac(window: {
  readonly glassAngle_deg: number;
  readonly panes_n: number;
  readonly paneTransmittance_frac?: number;
  readonly unitTransmittance_frac?: number;
  readonly refraction?: number;
}): number {
  within("glassAngle_deg", window.glassAngle_deg, 0, 180);
  const cosine = window.glassAngle_deg >= 90 ? 0 : Math.cos(window.glassAngle_deg * rad_per_deg);
  return throughOf_frac(opticsOf(window), cosine);
}

/**
 * Even light from a half space that a window lets through.
 *
 * 2 ∫ τ(θ) sin θ cos θ dθ
 *
 * @param window panes, 1 to 3; normal visible transmittance of one pane, 0.05 to what clear glass can have; of the unit on its label, 0.05 to 0.95; refractive index, 1.3 to 1.8
 * @returns share that passes
 * @throws QuantityError outside those ranges
 * @source DuffieBeckman2013 chapter 5
 * @see checks/sun-light.json 070
 * @example diffuseTransmittance_frac({ panes_n: 2 }) // 0.717
 */
export function diffuseTransmittance_frac(window: {
  readonly panes_n: number;
  readonly paneTransmittance_frac?: number;
  readonly unitTransmittance_frac?: number;
  readonly refraction?: number;
}): number {
  const optics = opticsOf(window);
  return diffuseOf_frac((cosine) => throughOf_frac(optics, cosine));
}

/**
 * How much less a single air-glass surface with absorbing glass behind it lets in at an angle than straight on.
 *
 * exp(−KL/cos θ2)(1 − r(θ)) over the same at θ = 0; not a window, which has two surfaces
 *
 * @param surface angle from the normal [°], 0 to 90; refractive index, 1.3 to 1.8; extinction over thickness, 0 to 12
 * @returns modifier, 0 to 1
 * @throws QuantityError outside those ranges
 * @source DeSoto2006
 * @see checks/sun-light.json 069
 * @example incidenceModifier({ glassAngle_deg: 45, refraction: 1.526, extinctionDepth: 0.008 }) // 0.98798
 */
export function incidenceModifier(surface: {
  readonly glassAngle_deg: number;
  readonly extinctionDepth: number;
  readonly refraction?: number;
}): number {
  within("glassAngle_deg", surface.glassAngle_deg, 0, 90);
  within("extinctionDepth", surface.extinctionDepth, 0, 12);
  const { refraction } = valuesOf(lightAssumptions, surface);
  const admitted = (cosine: number): number => {
    const inner = Math.sqrt(1 - (1 - cosine * cosine) / (refraction * refraction));
    return Math.exp(-surface.extinctionDepth / inner) * (1 - surfaceReflected_frac(cosine, refraction));
  };
  const cosine = surface.glassAngle_deg === 90 ? 0 : Math.cos(surface.glassAngle_deg * rad_per_deg);
  return admitted(cosine) / admitted(1);
}

/**
 * Light that passes all that hangs or lies before the glass.
 *
 * Product of the shares of dust, insect screen, net curtain, and of the frame when the whole opening was measured
 *
 * @param before which of them there are
 * @returns share that passes, in the middle of the usual bands
 * @source common practice, no source; values from memory
 * @example veilTransmittance_frac({ dusty: true, insectScreen: true, netCurtain: false, frameInOpening: false }) // 0.623
 */
export function veilTransmittance_frac(before: {
  readonly dusty: boolean;
  readonly insectScreen: boolean;
  readonly netCurtain: boolean;
  readonly frameInOpening: boolean;
}): number {
  return (
    (before.dusty ? veils.dusty.through_frac : 1) *
    (before.insectScreen ? veils["insect screen"].through_frac : 1) *
    (before.netCurtain ? veils["net curtain"].through_frac : 1) *
    (before.frameInOpening ? veils["frame in the opening"].through_frac : 1)
  );
}
