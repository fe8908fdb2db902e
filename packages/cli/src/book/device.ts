import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type DeviceId, isUuid7, uuidMaker } from "@sillwood/bench/book";
import type { Surroundings } from "../surroundings.ts";

/** The id under which this device writes; made once and kept in its own folder, outside any book. */
export function deviceId(around: Surroundings): DeviceId {
  const path = join(around.home, "device.json");
  if (existsSync(path)) {
    try {
      const { device } = JSON.parse(readFileSync(path, "utf8")) as { device?: unknown };
      if (typeof device === "string" && isUuid7(device)) return device as DeviceId;
    } catch {
      // A torn file names nobody: a new id is always safe, since a device is only a name.
    }
  }
  const device = uuidMaker()(around.now_ms(), around.random);
  mkdirSync(around.home, { recursive: true });
  writeFileSync(path, `${JSON.stringify({ device })}\n`);
  return device as DeviceId;
}
