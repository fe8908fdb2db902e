import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { askDemo, demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { sidewaysTroubles } from "../src/layout.ts";
import { allOnServer, enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

interface Act {
  readonly kind: string;
  readonly data: Readonly<Record<string, unknown>>;
}
interface ShellRound {
  readonly benches: readonly {
    readonly bench: string;
    readonly spots: readonly {
      readonly number: string;
      readonly tasks: readonly {
        readonly work: string;
        readonly plant: string;
        readonly title: string;
        readonly act: Act;
      }[];
    }[];
  }[];
}

const PT_PER_PX = 0.75;

it("walk 10: a round walked on paper is typed back with its exceptions and a weight", async () => {
  const device = await openDevice({ ...demoLook, screen: "smallPhone" });
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "helper");
    const before = await entriesOf(house);
    const { benches } = await askDemo<ShellRound>(house, ["round"]);
    const tasks = benches.flatMap(({ spots }) =>
      spots.flatMap((spot) => spot.tasks.map((task) => ({ ...task, number: spot.number }))),
    );

    await walker.tap(page.getByRole("button", { name: "Print", exact: true }));
    await page.getByRole("button", { name: "PRINT", exact: true }).waitFor();
    await settled(page);
    await walker.shoot("walk-10-sheet");
    expect(await accessibilityTroubles(page)).toEqual([]);
    const code = /Sheet (\d{8})/.exec((await page.locator("article").innerText()) ?? "")?.[1] ?? "";
    expect(code).toMatch(/^\d{8}$/);
    await walker.tap(page.getByRole("button", { name: "PRINT", exact: true }));

    // The sheet as the printer gets it.
    const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    expect(tasks.length).toBeGreaterThanOrEqual(40);
    await page.emulateMedia({ media: "print" });
    const printed = await page.evaluate(() => {
      const sheet = document.querySelector("article");
      const leaves = [...(sheet?.querySelectorAll<HTMLElement>("*") ?? [])].filter((element) =>
        [...element.childNodes].some(({ nodeType, textContent }) => nodeType === 3 && textContent?.trim()),
      );
      return {
        words: leaves.map((element) => ({
          said: element.textContent ?? "",
          px: Number.parseFloat(getComputedStyle(element).fontSize),
          colour: getComputedStyle(element).color,
        })),
        others: [...document.querySelectorAll("button")].filter((key) => key.checkVisibility()).length,
      };
    });
    await page.emulateMedia({ media: null });
    expect(printed.words.filter(({ px }) => px * PT_PER_PX < 11).map(({ said }) => said)).toEqual([]);
    expect(new Set(printed.words.map(({ colour }) => colour))).toEqual(new Set(["rgb(0, 0, 0)"]));
    expect(printed.others).toBe(0);
    const rows = page.locator("article [class*=row]:has([class*=write])");
    expect(await rows.count()).toBe(tasks.length);
    for (const [i, { number }] of tasks.entries()) expect(await rows.nth(i).innerText()).toContain(number);

    // Back at the sink.
    await walker.tap(page.getByRole("button", { name: "Type back" }));
    await page.getByRole("heading", { level: 1, name: "Number" }).waitFor();
    await walker.pad(code);
    await walker.tap(page.getByRole("button", { name: `GO to ${code}` }));
    await page.getByText("All are taken as done. Tap the exceptions, then keep.").waitFor();
    await settled(page);
    const poured = tasks.filter(({ work }) => work === "water");
    const [less, not, weighed] = [poured[0], poured[2], poured[4]];
    if (!less || !not || !weighed) throw new Error("the demo's round holds too few pots to water");
    const row = (number: string) => page.getByRole("group", { name: `${number} WATER` });
    await walker.tap(row(less.number).getByRole("button", { name: "less" }));
    await walker.tap(row(not.number).getByRole("button", { name: "not" }));
    await walker.tap(page.getByRole("textbox", { name: `grams ${weighed.number}` }));
    await walker.type("612");
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    await walker.shoot("walk-10-typed-back");
    await walker.tap(page.getByRole("button", { name: /^KEEP \d+ ENTRIES$/ }));
    await page
      .getByRole("status")
      .filter({ hasText: /^wrote/ })
      .waitFor();
    await allOnServer(page);
    await settled(page);
    await walker.shoot("walk-10-kept");

    // The same entries that DONE at every pot would have written, but for what the pencil said.
    const written = await entriesSince(house, before);
    const helper = before.find(({ kind, data }) => kind === "person.joined" && data["role"] === "helper");
    expect(new Set(written.map(({ by }) => by))).toEqual(new Set([helper?.on[0]]));
    const walked = tasks.flatMap(({ work, plant, number, act }) => {
      if (number === not.number)
        return [
          {
            kind: "round.skipped",
            on: [plant],
            data: { task: `watering:${work}`, reason: "no reason said" },
          },
        ];
      if (work === "weigh") return [];
      return [{ kind: act.kind, on: [plant], data: act.data }];
    });
    const amountOf = (entry: { data: Readonly<Record<string, unknown>> }) => Number(entry.data["volume_mL"]);
    const plain = written.map(({ kind, on, data }) => ({ kind, on, data }));
    const weight = plain.find(({ kind }) => kind === "watering.weighed");
    expect(weight).toEqual({
      kind: "watering.weighed",
      on: [weighed.plant],
      data: { weight_g: 612, state: "as found" },
    });
    // Each bench was walked, as a phone says at its end: whoever was not watered there was seen all the same.
    const passed = plain.filter(({ kind }) => kind === "round.walked");
    expect(passed).toEqual(
      benches.flatMap(({ bench, spots }) => {
        const here = spots.flatMap((spot) => spot.tasks);
        const left_n = spots.filter(({ number }) => number === not.number).length;
        if (here.length === 0) return [];
        const on = [...new Set(here.map(({ plant }) => plant))];
        return [{ kind: "round.walked", on, data: { bench, tasks_n: here.length - left_n } }];
      }),
    );
    const acts = plain.filter((entry) => entry !== weight && !passed.includes(entry));
    const lessThan = acts.find(({ on }) => on[0] === less.plant);
    expect(lessThan && amountOf(lessThan)).toBeLessThan(Number(less.act.data["volume_mL"]));
    expect(acts.filter((entry) => entry !== lessThan)).toEqual(
      walked.filter(({ on }) => on[0] !== less.plant),
    );
    walker.finish({ taps_n: 12, digits_n: 11, typedValues_n: 2 });
  } finally {
    await device.discard();
  }
});

it("walk 10: labels of pots and benches can be read, and their words fit", async () => {
  const device = await openDevice(demoLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    await page.goto(`${house.address}#/print/labels`);
    await settled(page);
    for (const sheet of ["benches", "pots"]) {
      if (sheet === "pots") await page.getByRole("button", { name: "South sill" }).click();
      await settled(page);
      await walker.shoot(`walk-10-labels-${sheet}`);
      const labels = await page.locator("[class*=label_]").evaluateAll((all) =>
        all.map((label) => ({
          said: (label as HTMLElement).innerText,
          least_px: Math.min(
            ...[...label.querySelectorAll("strong, span")].map((word) =>
              Number.parseFloat(getComputedStyle(word).fontSize),
            ),
          ),
          sticksOut: [...label.querySelectorAll("strong, span")].some((word) => {
            const [inner, outer] = [word.getBoundingClientRect(), label.getBoundingClientRect()];
            const isCut = word.tagName === "SPAN" && word.scrollHeight > word.clientHeight + 1;
            return inner.bottom > outer.bottom || inner.right > outer.right || isCut;
          }),
        })),
      );
      expect(labels.length).toBeGreaterThan(3);
      expect(labels.filter(({ least_px }) => least_px * PT_PER_PX < 11)).toEqual([]);
      expect(labels.filter(({ sticksOut }) => sticksOut)).toEqual([]);
    }
  } finally {
    await device.discard();
  }
});
