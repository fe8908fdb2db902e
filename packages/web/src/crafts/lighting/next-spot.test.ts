import { expect, test } from "vitest";
import { nextSpot } from "./next-spot.ts";

const spot = (name: string, along_m: number, fromGlass_m: number) => ({ spot: name, along_m, fromGlass_m });
const benches = [
  { spots: [spot("a", 0, 0.2), spot("b", 0.2, 0.2), spot("c", 0.2, 0.5)] },
  { spots: [spot("d", 0, 0.2), spot("e", 0.2, 0.2)] },
];
const to = (from: string | undefined, direction: "left" | "right" | "up" | "down") =>
  nextSpot(benches, from, direction);

test("left and right walk in standing order, over the end of a bench", () => {
  expect(to("a", "right")).toBe("b");
  expect(to("c", "right")).toBe("d");
  expect(to("d", "left")).toBe("c");
  expect(to("a", "left")).toBeUndefined();
  expect(to("e", "right")).toBeUndefined();
});

test("up leads to the glass, down into the room, then to the next bench", () => {
  expect(to("c", "up")).toBe("b");
  expect(to("b", "down")).toBe("c");
  expect(to("c", "down")).toBe("e");
  expect(to("e", "up")).toBe("b");
  expect(to("a", "up")).toBeUndefined();
});

test("with nothing chosen an arrow begins at the first", () => {
  expect(to(undefined, "down")).toBe("a");
});
