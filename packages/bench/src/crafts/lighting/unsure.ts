import { paneLight, paneView, usualGlazings } from "@sillwood/science/light";
import {
  clearSkyGlobal_W_m2,
  diffuseSplit,
  normalExtraterrestrial_W_m2,
  sunDay,
  sunPosition,
} from "@sillwood/science/sun";
import { compassSaid } from "../../places/light/sentences.ts";
import { panesOf } from "../../places/light/windows.ts";
import type { Bench, Places } from "../../places/places.ts";
import { dayOfYear_d } from "../../places/time.ts";
import type { World } from "../craft.ts";
import type { UnsureWindow } from "./page-shape.ts";
import { usualDate } from "./usual-date.ts";
import { lightPageWords } from "./words-page.ts";

/** The two windows that differ most. */
const CASES_deg = [180, 0] as const;
const LUX_PER_W_m2 = 0.45 * 4.57 * 54;
const DAY_ms = 86_400_000;

/** Where nobody knows which way the window faces: both cases, and the reading that parts them. */
export function unsureWindow(world: World, bench: Bench, date: string): UnsureWindow | undefined {
  const { places, say, calendar, now_ms } = world;
  const { light, lit } = places;
  const known =
    bench.outdoors ||
    bench.windowFaces_deg !== undefined ||
    light.windows.has(bench.id) ||
    light.lamps.has(bench.id) ||
    lit.has(bench.id);
  const spot = bench.spots[Math.floor(bench.spots.length / 2)]?.id;
  if (known || spot === undefined) return undefined;
  const words = lightPageWords(say).page;
  const usual = usualDate(calendar.dateOf(now_ms), date);
  const cases = CASES_deg.map((faces_deg) => {
    const supposed = facing(places, bench, faces_deg);
    const { dli_mol_m2_d, daylight } = world.airIn(supposed)(spot, usual);
    return {
      faces_deg,
      said: words.caseSaid(compassSaid(faces_deg, say.language)),
      mid_mol_m2_d: dli_mol_m2_d,
      dull_mol_m2_d: daylight.dull_mol_m2_d,
      sunny_mol_m2_d: daylight.sunny_mol_m2_d,
      noon_lux: noon_lux(world, supposed, spot, usual),
    };
  });
  const [bright, dim] = cases;
  if (!bright || !dim) return undefined;
  const round = (lux: number) => say.illuminance(Number(lux.toPrecision(2)));
  return {
    said: words.unsure,
    cases,
    ask: words.noonAsk(
      round(bright.noon_lux),
      compassSaid(bright.faces_deg, say.language),
      round(dim.noon_lux),
      compassSaid(dim.faces_deg, say.language),
    ),
  };
}

const facing = (places: Places, bench: Bench, windowFaces_deg: number): Places => ({
  ...places,
  benches: new Map(places.benches).set(bench.id, { ...bench, windowFaces_deg }),
});

/** What a lux meter at the leaf shows at noon of a clear day. */
function noon_lux({ calendar }: World, places: Places, spot: string, date: string): number {
  const { latitude_deg, longitude_deg } = places.site;
  const bench = places.benches.get(places.benchOfSpot.get(spot) ?? "");
  if (!bench) return 0;
  const midnight_ms = calendar.midnight_ms(date);
  const { transit_ms } = sunDay({ noon_ms: midnight_ms + DAY_ms / 2, latitude_deg, longitude_deg });
  const sun = sunPosition({ instant_ms: transit_ms, latitude_deg, longitude_deg });
  const split = diffuseSplit({
    hourGlobal_W_m2: clearSkyGlobal_W_m2(sun.apparentElevation_deg),
    elevation_deg: sun.elevation_deg,
    normalExtraterrestrial_W_m2: normalExtraterrestrial_W_m2({ dayOfYear_d: dayOfYear_d(date) }),
  });
  const views = panesOf(places, bench, spot, midnight_ms + DAY_ms).map((pane) =>
    paneView({
      facing_deg: pane.faces_deg,
      left_m: pane.left_m,
      right_m: pane.right_m,
      bottom_m: pane.bottom_m,
      top_m: pane.top_m,
      distance_m: pane.fromGlass_m,
      revealDepth_m: pane.recess_m,
      glazing: usualGlazings[pane.glazing],
      horizon_deg: pane.opposite_deg,
    }),
  );
  const { diffuse, direct } = paneLight(views, {
    ...split,
    elevation_deg: sun.elevation_deg,
    azimuth_deg: sun.azimuth_deg,
  });
  return (diffuse.level_W_m2 + direct.level_W_m2) * LUX_PER_W_m2;
}
