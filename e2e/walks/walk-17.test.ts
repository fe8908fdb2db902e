import { afterAll, beforeAll, expect, it } from "vitest";
import { chanceOf } from "../../simulator/src/nursery/chance.ts";
import { type DrawnJoint, drawnPlant } from "../../simulator/src/shape/drawn-plant.ts";
import { type Pixel, pixelOf, type TrueCamera } from "../../simulator/src/shape/photographed.ts";
import { drawnPhoto } from "../../simulator/src/shape/picture.ts";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { mainKeyTrouble, sidewaysTroubles } from "../src/layout.ts";
import { allOnServer, enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

const CARD_mm = 85.6;
/** What the phone's photos are: 900 by 1200, its lens as of a 26 mm one. */
const CAMERA: TrueCamera = {
  distance_mm: 460,
  focal_px: (26 / 36) * 1200,
  width_px: 900,
  height_px: 1200,
  offX_px: 0,
  offY_px: 0,
  distortion_frac: 0,
  turn_deg: 90,
  lens_mm: 90,
};

/** The trunk and four branches of a small plant: what a person would trace, in the order in which they would. */
function traceable(): readonly DrawnJoint[] {
  const all = drawnPlant(chanceOf("walk 17"), 30);
  const trunk = all.slice(0, 5);
  const arms: DrawnJoint[] = [];
  for (const first of all.filter(({ below }) => below === trunk.at(-1)?.id)) {
    let last: DrawnJoint | undefined = first;
    for (let joint = 0; joint < 3 && last; joint += 1) {
      arms.push(last);
      last = all.find(({ below }) => below === (last as DrawnJoint).id);
    }
  }
  const chosen = [...trunk.filter((_, at) => at !== 1 && at !== 3), ...arms];
  // Two joints that hide one another in the front photo can't be tapped apart; nor can what grows on a hidden one.
  const seen: DrawnJoint[] = [];
  for (const joint of chosen) {
    const [x, y] = pixelOf(CAMERA, joint, "front");
    const clear = seen.every((other) => {
      const [u, v] = pixelOf(CAMERA, other, "front");
      return Math.hypot(u - x, v - y) > 16;
    });
    const grows =
      trunk.includes(joint) || joint.below === trunk.at(-1)?.id || seen.some(({ id }) => id === joint.below);
    if (clear && grows) seen.push(joint);
  }
  return seen;
}

it("walk 17: two photos traced by touch alone, plans on the photo, another joint, the middle kept, printed", async () => {
  const device = await openDevice(demoLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const entries = await entriesOf(house);
    const plant = "128";
    await page.goto(`${house.address}#/craft/trim`);
    await settled(page);
    await page.getByRole("button", { name: new RegExp(`^${plant}\\b`) }).click();
    await settled(page);
    await walker.tap(page.getByRole("button", { name: "TRACE TWO PHOTOS" }));

    const joints = traceable();
    for (const which of ["front", "side"] as const) {
      await page.locator("input[type=file]").setInputFiles({
        name: `${which}.png`,
        mimeType: "image/png",
        buffer: Buffer.from(drawnPhoto(joints, CAMERA, which, CARD_mm)),
      });
      await page.waitForTimeout(300);
    }
    let traceTaps_n = 0;
    const tapAt = async (which: "front" | "side", [x, y]: Pixel) => {
      const photo = page.locator(`svg[data-trace="${which}"]`);
      await photo.waitFor();
      const at = await photo.evaluate(
        (svg, point) => {
          const place = new DOMPoint(point[0], point[1]).matrixTransform(
            (svg as SVGSVGElement).getScreenCTM() as DOMMatrix,
          );
          return [place.x, place.y] as const;
        },
        [x, y] as const,
      );
      await page.mouse.click(at[0], at[1]);
      traceTaps_n += 1;
    };
    const spot = (right_mm: number, away_mm: number, up_mm: number) => ({ right_mm, away_mm, up_mm });
    await tapAt("front", pixelOf(CAMERA, spot(40, 0, 0), "front"));
    await tapAt("front", pixelOf(CAMERA, spot(40, 0, CARD_mm), "front"));
    const placed = new Set<string>();
    let last: string | undefined;
    for (const joint of joints) {
      let below = joint.below;
      // A joint that was left out of the trace: its own below stands in for it.
      while (below !== undefined && !placed.has(below)) below = String(Number(below) - 1);
      const from = joints.find(({ id }) => id === below);
      if (from && below !== last) await tapAt("front", pixelOf(CAMERA, from, "front"));
      await tapAt("front", pixelOf(CAMERA, joint, "front"));
      await tapAt("side", pixelOf(CAMERA, joint, "side"));
      placed.add(joint.id);
      last = joint.id;
    }
    await walker.shoot("walk-17-traced");
    expect(await page.locator("main [role=alert]").count()).toBe(0);
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    await walker.tap(page.getByRole("button", { name: /^KEEP \d+ JOINTS$/ }));
    expect(traceTaps_n).toBeLessThanOrEqual(45);

    await page.getByRole("radio", { name: "middle" }).waitFor();
    // While the search goes on keys answer and plans may still change: the walk waits for its end.
    await page.getByText(/sets of cuts tried\./).waitFor();
    await walker.shoot("walk-17-plans");
    const main = page.locator("main");
    const said = async (plan: string) => {
      await page.getByRole("radio", { name: plan, exact: true }).check();
      return main.innerText();
    };
    expect(await page.getByRole("radio", { name: "nothing" }).count()).toBe(1);
    const middle = await said("middle");
    expect(middle).toMatch(/of lit leaf, \d+\s?% of all leaf, limit \d+\s?%/);
    expect(middle).toMatch(/shoots?, first to the (left|right|front|back)/);
    expect(middle).toMatch(/in \d+ to \d+ days/);
    expect(middle).toMatch(/not before /);
    expect(await said("nothing")).not.toBe(middle);
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    expect(await mainKeyTrouble(page)).toBeUndefined();
    await page.getByRole("radio", { name: "middle", exact: true }).check();

    await walker.tap(page.getByRole("button", { name: "Other joint" }));
    await walker.tap(main.getByRole("button", { name: /^branch 1, joint 2$/ }));
    await page.locator("section[aria-label^=cut]").waitFor();
    await walker.shoot("walk-17-other");
    expect(await main.innerText()).toMatch(/takes[\s\S]*of lit leaf/);
    await walker.tap(page.getByRole("button", { name: "Plans" }));
    await walker.tap(page.getByRole("button", { name: "KEEP THIS PLAN" }));
    await page.getByRole("button", { name: "I MADE CUT A" }).waitFor();
    await walker.shoot("walk-17-kept");
    await allOnServer(page);
    const kinds = (await entriesSince(house, entries)).map(({ kind }) => kind);
    expect(kinds).toContain("trimming.planned");
    expect(kinds).not.toContain("trimming.cut");

    await walker.tap(page.getByRole("button", { name: "Print for bench" }));
    await page.getByRole("button", { name: "PRINT", exact: true }).waitFor();
    await walker.shoot("walk-17-print");
    await page.goBack();
    await walker.tap(page.getByRole("button", { name: "I MADE CUT A" }));
    await allOnServer(page);
    // The touch may still be on its way to the disk of the phone when all before it is on the server.
    await expect
      .poll(async () => (await entriesSince(house, entries)).map(({ kind }) => kind))
      .toContain("trimming.cut");
    // Beside the taps on the photos: begin, keep the trace, other joint, one joint, back, keep the plan, print, cut made.
    walker.finish({ taps_n: 8 });
  } finally {
    await device.discard();
  }
}, 120_000);
