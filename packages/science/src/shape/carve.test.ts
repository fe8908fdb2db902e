import { describe, expect, it } from "vitest";
import { carvedHull, hullRatio, type Silhouette } from "./index.ts";

const SIZE_px = 200;

/** The outline of a ball or an upright cylinder seen from afar, the same from all sides. */
const photos = (form: "ball" | "cylinder", turns_deg: readonly number[]): readonly Silhouette[] =>
  turns_deg.map((turn_deg) => {
    const mask = new Uint8Array(SIZE_px * SIZE_px);
    const distance_mm = 20_000;
    const focal_px = 20_000;
    for (let y = 0; y < SIZE_px; y += 1)
      for (let x = 0; x < SIZE_px; x += 1) {
        const u = x + 0.5 - SIZE_px / 2;
        const v = y + 0.5 - SIZE_px / 2;
        const inside = form === "ball" ? u * u + v * v <= 60 * 60 : Math.abs(u) <= 40 && Math.abs(v) <= 70;
        mask[y * SIZE_px + x] = inside ? 1 : 0;
      }
    return {
      mask,
      width_px: SIZE_px,
      height_px: SIZE_px,
      turn_deg,
      distance_mm,
      focal_px,
      down_deg: 0,
      middleX_px: SIZE_px / 2,
      middleY_px: SIZE_px / 2,
    };
  });
const turns = (n: number) => Array.from({ length: n }, (_, stop) => (180 * stop) / n);
const CUBE = { cube_mm: 200, lift_mm: 0, misses_n: 0 } as const;

describe("the visual hull", () => {
  it.each([2, 3, 6, 12])("over-fills a cylinder and a ball seen from %i sides as geometry says", (n) => {
    const cylinder = carvedHull(photos("cylinder", turns(n)), { ...CUBE, cells_n: 128 });
    expect(cylinder.volume_cm3 / ((Math.PI * 40 ** 2 * 140) / 1000)).toBeCloseTo(hullRatio(n), 1);
    const ball = carvedHull(photos("ball", turns(n)), { ...CUBE, cells_n: 128 });
    expect(Math.abs(ball.volume_cm3 / (((4 / 3) * Math.PI * 60 ** 3) / 1000) - hullRatio(n))).toBeLessThan(
      0.03,
    );
    expect(cylinder.height_mm).toBeCloseTo(140, -1);
  });

  it("gives the same by blocks as cell by cell", () => {
    const views = photos("ball", turns(3));
    const coarse = carvedHull(views, { ...CUBE, cells_n: 32 });
    const cell = 200 / 32;
    let full = 0;
    for (let x = 0; x < 32; x += 1)
      for (let y = 0; y < 32; y += 1)
        for (let z = 0; z < 32; z += 1) {
          const at = [x, y, z].map((each) => (each + 0.5) * cell - 100) as [number, number, number];
          const inside = turns(3).every((turn_deg) => {
            const turn = (turn_deg * Math.PI) / 180;
            const u = at[0] * Math.cos(turn) - at[1] * Math.sin(turn);
            return Math.hypot(u, at[2]) < 60;
          });
          if (inside) full += 1;
        }
    expect(Math.abs(coarse.volume_cm3 - (full * cell ** 3) / 1000)).toBeLessThan(coarse.volume_cm3 * 0.02);
  });

  it("lets a photo miss, and refuses sizes that are none", () => {
    const views = photos("ball", turns(4));
    const blank = { ...(views[0] as Silhouette), mask: new Uint8Array(SIZE_px * SIZE_px) };
    expect(carvedHull([...views, blank], { ...CUBE, cells_n: 32 }).volume_cm3).toBe(0);
    expect(carvedHull([...views, blank], { ...CUBE, cells_n: 32, misses_n: 1 }).volume_cm3).toBeGreaterThan(
      500,
    );
    expect(() => carvedHull(views, { ...CUBE, cells_n: 100 })).toThrow("expected a power of two");
    expect(() => carvedHull(views.slice(1, 2), { ...CUBE, cells_n: 32 })).toThrow("expected 2 to 120");
  });
});
