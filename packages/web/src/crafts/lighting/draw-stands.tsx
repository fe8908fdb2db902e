import type { BenchLight, SpotLit } from "@sillwood/bench/crafts/lighting";
import { useState } from "react";
import type { FormData } from "../../pages/fields/entry-form.tsx";
import { DrawForm } from "./draw-form.tsx";
import { Plan } from "./plan.tsx";
import { SideView } from "./side-view.tsx";
import { useLightWords } from "./use-light.ts";

interface DrawStandsProps {
  readonly bench: BenchLight;
  readonly spot: SpotLit;
}

/** Where a spot lies: along the bench and from the glass, seen from above and from the side as it is typed. */
export function DrawStands({ bench, spot }: DrawStandsProps) {
  const words = useLightWords();
  const [data, setData] = useState<FormData>(() =>
    spot.placeOrigin === "measured" ? { along_m: spot.along_m, fromGlass_m: spot.fromGlass_m } : {},
  );
  const number = (key: "along_m" | "fromGlass_m") => {
    const value = data[key];
    return typeof value === "number" ? value : spot[key];
  };
  const moved: SpotLit = { ...spot, along_m: number("along_m"), fromGlass_m: number("fromGlass_m") };
  return (
    <DrawForm
      where={words.standsTitle(spot.name)}
      bench={bench.bench}
      kind="spot.stands"
      on={spot.spot}
      data={data}
      onChange={setData}
      without={[]}
      keep={words.keepStands}
    >
      <SideView bench={bench} spot={moved} />
      <Plan
        bench={{
          ...bench,
          plan: {
            ...bench.plan,
            left_m: Math.min(bench.plan.left_m, moved.along_m),
            right_m: Math.max(bench.plan.right_m, moved.along_m),
            far_m: Math.max(bench.plan.far_m, moved.fromGlass_m),
          },
          spots: bench.spots.map((one) => (one.spot === spot.spot ? moved : one)),
        }}
        chosen={spot.spot}
        moving={undefined}
        onPress={() => undefined}
        isFirst
      />
    </DrawForm>
  );
}
