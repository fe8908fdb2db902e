import { type Say, sayFor } from "@sillwood/bench/words";
import { useMemo, useSyncExternalStore } from "react";
import { onSettings, type Settings, settings, zoneOf } from "../device/settings.ts";

export function useSettings(): Settings {
  return useSyncExternalStore(onSettings, settings);
}

/** For numbers that a person is just typing; everything the engine says comes in words already. */
export function useSay(): Say {
  const { language, units, zone } = useSettings();
  return useMemo(
    () => sayFor({ language, units, zone: zoneOf({ ...settings(), zone }), nameOf: (id) => id }),
    [language, units, zone],
  );
}
