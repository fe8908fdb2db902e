import { describe, expect, it } from "vitest";
import { bed, DAY_ms, FIRST_DATE } from "./test-kit.ts";

/** What growers know of peppers, as the program must say it. Common practice, no source, where none is named. */
describe("habits of the trade", () => {
  it("a chinense on a cool sill stalls, and it is said (plastochron above 16.8 °C: biquinho peppers, 2019)", () => {
    const lantern = bed({ habit: "lantern", sownOn: "2025-11-01" }, { air_C: 18 });
    expect(lantern.outlook(10).head?.said).toContain("at 18 °C it hardly grows: 1.2 °C d a day");
    expect(lantern.outlook(10, "de").head?.said).toContain("bei 18 °C wächst sie kaum: 1,2 °C d am Tag");
    const thin = bed({ habit: "thin", sownOn: "2025-11-01" }, { air_C: 18 });
    expect(thin.outlook(10).head?.said).not.toContain("hardly");
    const cold = bed({ habit: "lantern", sownOn: "2025-11-01" }, { air_C: 12 });
    expect(cold.outlook(10).head?.said).toContain("does not grow");
    expect(cold.outlook(10).line).toBeUndefined();
  });

  it("a cultivar's species counts before the kind of its fruit, also when it is written later", () => {
    const plant = bed({ cultivar: "c1", sownOn: "2025-11-01" }, { air_C: 18 });
    const fast = plant.growing(30).sum_Cd;
    plant.write(
      12,
      "cultivar.described",
      { name: "Test Lantern", species: "chinense", habit: "lantern" },
      "c1",
    );
    expect(plant.growing(30).sum_Cd).toBeLessThan(0.8 * fast);
    expect(
      plant
        .outlook(30)
        .workings.some(({ inputs }) => inputs.some(({ assumption }) => assumption === "baseChinense_C")),
    ).toBe(true);
  });

  it("after a hard cut-back the clock starts at the first new leaf, 10 to 20 days later at 20 to 24 °C", () => {
    const plant = bed({ sownOn: "2025-06-01" });
    plant.write(2, "shears.used", { kept_frac: 0.2, what: "cut" });
    const { figures, line, tasks, head } = plant.outlook(3);
    expect(head?.said).toBe("at rest until new leaves come");
    expect(figures["next"]).toBe("new leaves");
    const [first, last] = [line?.dates_ms[2] ?? 0, line?.dates_ms[17] ?? 0];
    const cut_ms = plant.growing(3).clock.at_ms;
    expect((first - cut_ms) / DAY_ms).toBeGreaterThan(9);
    expect((last - cut_ms) / DAY_ms).toBeLessThan(21);
    expect(tasks[0]).toMatchObject({
      work: "look",
      act: { kind: "growth.staged", data: { stage: "new leaves" } },
    });
    expect(plant.read(3, "stage_bbch").value).toBe(0);
    plant.write(12, "growth.staged", { stage: "new leaves" });
    expect(plant.outlook(13).figures).toMatchObject({ bbch: 15, clockFrom: "seen", rest_Cd: 0 });
    expect(plant.outlook(13).tasks).toEqual([]);
  });

  it("a light trim or plucked leaves leave the clock alone", () => {
    const plant = bed({ sownOn: FIRST_DATE });
    const untouched = bed({ sownOn: FIRST_DATE });
    plant.write(30, "shears.used", { kept_frac: 0.8, what: "cut" });
    plant.write(31, "shears.used", { kept_frac: 0.3, what: "plucked" });
    expect(plant.growing(40).sum_Cd).toBeCloseTo(untouched.growing(40).sum_Cd, 6);
    expect(plant.growing(31.1).leafArea_m2).toBeLessThan(0.3 * untouched.growing(31.1).leafArea_m2);
  });

  it("says when the first flower opens and the first fruit is ripe, near the day that came", () => {
    const plant = bed({ sownOn: FIRST_DATE });
    const { line } = plant.outlook(55);
    expect(line?.said).toMatch(/^first flower /);
    expect(line?.dates_ms).toHaveLength(20);
    const middle_d = ((line?.dates_ms[10] ?? 0) - plant.outward(0).now_ms) / DAY_ms;
    expect(Math.abs(middle_d - 73)).toBeLessThan(5);
    plant.write(73, "growth.staged", { stage: "first flower" });
    expect(plant.outlook(110).line?.said).toMatch(/^first ripe fruit /);
    expect(plant.outlook(74).line).toBeUndefined();
  });

  it("names cold and rest when somebody sees no new leaves", async () => {
    const { growthWrong } = await import("./signs.ts");
    const seen = (plant: ReturnType<typeof bed>, day: number) =>
      growthWrong.signs(
        plant.ledger.stateAt(plant.outward(day).plant.id, plant.outward(day).now_ms)?.slices[0] as never,
        plant.outward(day),
        ["no new leaves"],
      );
    const cool = bed({ habit: "lantern" }, { air_C: 17 });
    expect(seen(cool, 5)[0]).toMatchObject({ key: "cold stop" });
    const cut = bed();
    cut.write(2, "shears.used", { kept_frac: 0.1, what: "cut" });
    expect(seen(cut, 5).map(({ key }) => key)).toEqual(["at rest", "cold stop"]);
    expect(growthWrong.signs({} as never, cool.outward(5), ["droops"])).toEqual([]);
  });
});
