import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import { lightAssumptions } from "./assumptions.ts";
import { horizonTable_rad } from "./horizon.ts";
import { apertureFactors } from "./pane-patches.ts";
import { beamSteps_n, type PaneView, planes_n } from "./pane-view.ts";

/** Taller than any ray that matters: within a ten-thousandth of straight up. */
const endless_m = 10_000;

/**
 * The open sky over a plant outdoors, as four views of a quarter of the compass each, to be used like panes.
 *
 * The same sums as through a pane, without glass or edges: on open ground level light is that of a station, light from all around
 * twice the diffuse, plus the beam and what the ground sends back
 *
 * @param place height of what stands around [°], 0 to 90, one value or evenly round the compass from north; compass direction of the crown's front [°], 0 to 360; albedo of the ground and brightness of what stands around, as assumed when left out
 * @returns views for `paneLight`, `windowDay` and `windowDays`, all four to be given together
 * @throws QuantityError outside those ranges
 * @source MoonSpencer1942 for the overcast sky
 */
export function openSkyViews(
  place: {
    readonly horizon_deg?: number | readonly number[];
    readonly front_deg?: number;
    readonly groundAlbedo?: number;
    readonly facadeBrightness_frac?: number;
    readonly overcastBelow_frac?: number;
  } = {},
): readonly PaneView[] {
  const { horizon_deg = 0, front_deg = 0 } = place;
  within("front_deg", front_deg, 0, 360);
  const set = valuesOf(lightAssumptions, place);
  const horizon_rad = horizonTable_rad(horizon_deg);
  const front_rad = front_deg * rad_per_deg;
  const beamGlass_frac = new Float64Array(beamSteps_n + 1).fill(1);
  return [0, 90, 180, 270].map((quarter_deg) => {
    const facing_rad = (front_deg + quarter_deg) * rad_per_deg;
    const skyFactors_frac = new Float64Array(2 * planes_n);
    const groundFactors_frac = new Float64Array(planes_n);
    const shared = { facing_rad, front_rad, horizon_rad, beamGlass_frac };
    apertureFactors(
      {
        ...shared,
        facadeBrightness_frac: set.facadeBrightness_frac,
        edges_m: [-1, 1, -endless_m, endless_m],
        distance_m: 1,
        revealDepth_m: 0,
      },
      1,
      skyFactors_frac,
      groundFactors_frac,
    );
    for (let plane = 0; plane < planes_n; plane += 1) {
      groundFactors_frac[plane] = (groundFactors_frac[plane] as number) * set.groundAlbedo;
    }
    // Half open to the right, so that a sun just between two quarters is seen by one of them only.
    const [left, right] = [-1, 1 - 1e-12];
    const slopes = [left, right, -Infinity, Infinity];
    return {
      ...shared,
      overcastBelow_frac: set.overcastBelow_frac,
      skyFactors_frac,
      groundFactors_frac,
      openings: Float64Array.from([...slopes, ...slopes]),
    };
  });
}
