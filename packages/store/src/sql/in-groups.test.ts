import { expect, it } from "vitest";
import { inGroups } from "./in-groups.ts";

const straight = <Done>(act: () => Promise<Done>) => act();

it("acts that come together share one run, and each gets its own result", async () => {
  const groups: number[][] = [];
  const act = inGroups<number, number>((items) => {
    groups.push([...items]);
    return items.map((item) => item * 10);
  }, straight);
  expect(await Promise.all([1, 2, 3].map(act))).toEqual([10, 20, 30]);
  expect(await act(4)).toBe(40);
  expect(groups).toEqual([[1, 2, 3], [4]]);
});

it("one that fails is told, and the others of its group are done all the same", async () => {
  const act = inGroups<number, number>((items) => {
    if (items.includes(2)) throw new Error("two is bad");
    return items;
  }, straight);
  const ended = await Promise.allSettled([1, 2, 3].map(act));
  expect(ended.map(({ status }) => status)).toEqual(["fulfilled", "rejected", "fulfilled"]);
});

it("a closed gate refuses those that wait, and hundreds are done in several groups", async () => {
  const sizes: number[] = [];
  const act = inGroups<number, number>((items) => {
    sizes.push(items.length);
    return items;
  }, straight);
  await Promise.all(Array.from({ length: 150 }, (_, i) => act(i)));
  expect(sizes).toEqual([64, 64, 22]);
  const shut = inGroups<number, number>(
    (items) => items,
    () => Promise.reject(new Error("closed")),
  );
  await expect(shut(1)).rejects.toThrow("closed");
});
