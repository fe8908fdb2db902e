/** How somebody looks, pours and writes. People differ more than books about plants allow for. */
export interface Person {
  readonly key: string;
  /** Felt dryness at which they water. */
  readonly dryAt_frac: number;
  /** How much they go by the colour of the surface, the rest by lifting the pot. */
  readonly goesBySurface_frac: number;
  /** Scatter of one judgement. */
  readonly wobble_frac: number;
  /** Waters every so many days whatever the pot says. */
  readonly habit_d?: number;
  /** Waters on some days of the week whatever the pot says; whether this is one of them. `habit_d` is then not asked. */
  readonly watersToday?: boolean;
  /** How often somebody with a habit still leaves out a pot that is plainly wet. */
  readonly sparesWet_frac?: number;
  readonly eye?: Eye;
  readonly pours: "jug" | "until it runs";
  /** What lands in the pot over what they write. */
  readonly hand_frac: number;
  readonly writesWalk_frac: number;
  readonly writesLook_frac: number;
  readonly saysDrained_frac: number;
  readonly emptiesSaucer_frac: number;
  /** Waters and writes nothing. */
  readonly forgets_frac: number;
  /** Smallest step of their kitchen scale. */
  readonly scaleStep_g: number;
  readonly scale?: Scale;
  /** How often they put a weight under the wrong pot, and turn two digits round. */
  readonly wrongPot_frac?: number;
  readonly turnsDigits_frac?: number;
}

/** How somebody calls what they see; two people call one pot by different words. */
export interface Eye {
  /** Depletion that they see over the depletion that is, and its scatter from look to look. */
  readonly bias_frac: number;
  readonly scatter_frac: number;
  /** Depletion up to which they say wet, and moist. */
  readonly wetTo_frac: number;
  readonly moistTo_frac: number;
}

/** A kitchen scale as it is. */
export interface Scale {
  /** What it shows over what lies on it. */
  readonly gain_frac: number;
  readonly from_ms: number;
  /** Zero of each day: it drifts, and on some days nobody sees that a saucer is still tared or something lies on the pan. */
  readonly zero_g: Float64Array;
}
