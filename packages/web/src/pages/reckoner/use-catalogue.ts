import type { ScienceFunction } from "@sillwood/science/catalogue";
import { useEffect, useState } from "react";

let kept: readonly ScienceFunction[] | undefined;

/** Every public function of science, fetched when somebody first reckons. */
export function useCatalogue(): { readonly sums?: readonly ScienceFunction[]; readonly error?: Error } {
  const [state, setState] = useState<{ sums?: readonly ScienceFunction[]; error?: Error }>(
    kept ? { sums: kept } : {},
  );
  useEffect(() => {
    if (kept) return;
    import("@sillwood/science/catalogue").then(
      ({ catalogue }) => {
        kept = catalogue;
        setState({ sums: catalogue });
      },
      (error: Error) => setState({ error }),
    );
  }, []);
  return state;
}
