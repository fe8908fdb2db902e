import type { BenchLight, LampDrawn, LightPage } from "@sillwood/bench/crafts/lighting";
import { useState } from "react";
import type { FormData } from "../../pages/fields/entry-form.tsx";
import { Cares } from "./cares.tsx";
import { DrawForm } from "./draw-form.tsx";
import { SideView } from "./side-view.tsx";
import { useLightWords } from "./use-light.ts";

interface DrawLampProps {
  readonly page: LightPage;
  readonly bench: BenchLight;
  readonly lamp_n: number;
}

/** A lamp over a bench: its form, its power, how high it hangs; cautions before the hands go up. */
export function DrawLamp({ page, bench, lamp_n }: DrawLampProps) {
  const words = useLightWords();
  const stands = bench.lamps.find((one) => one.lamp_n === lamp_n);
  const [data, setData] = useState<FormData>(() => dataOf(stands, lamp_n));
  const form = data["form"];
  const above_m = typeof data["above_m"] === "number" ? data["above_m"] : 0.3;
  const fromGlass_m =
    typeof data["fromGlass_m"] === "number" ? data["fromGlass_m"] : (bench.spots[0]?.fromGlass_m ?? 0.25);
  const drawn: LampDrawn = {
    lamp_n,
    said: "",
    form: (form as LampDrawn["form"] | undefined) ?? "strip",
    source: "white LED",
    above_m,
    along_m: 0,
    fromGlass_m,
    power_W: 0,
    origin: data["above_m"] === undefined ? "assumed" : "measured",
  };
  return (
    <DrawForm
      where={words.lampTitle(bench.name)}
      bench={bench.bench}
      kind="bench.lamp"
      on={bench.bench}
      data={data}
      onChange={setData}
      // A bulb has no lit length; its beam says more.
      without={["lamp_n", ...(form === "point" ? ["length_m", "width_m"] : ["beam_deg"])]}
      keep={words.keepLamp}
    >
      <Cares cautions={page.cautions} of={["water", "eyes", "heat", "load"]} />
      <SideView
        bench={{ windows: bench.windows, lamps: [drawn], windowSaid: bench.windowSaid }}
        spot={bench.spots[0]}
      />
    </DrawForm>
  );
}

function dataOf(stands: LampDrawn | undefined, lamp_n: number): FormData {
  if (!stands) return { lamp_n };
  const { form, source, length_m, width_m, power_W, above_m, along_m, fromGlass_m } = stands;
  return {
    lamp_n,
    form,
    source,
    power_W,
    above_m,
    along_m,
    fromGlass_m,
    ...(length_m === undefined ? {} : { length_m }),
    ...(width_m === undefined ? {} : { width_m }),
  };
}
