import { fileURLToPath } from "node:url";
import { type House, openHouse } from "../src/house.ts";

/** Opens the trial house through the same door as the real one. */
export const openTrial = (): Promise<House> =>
  openHouse({
    program: [
      process.execPath,
      "--import",
      import.meta.resolve("tsx"),
      fileURLToPath(new URL("trial-house.ts", import.meta.url)),
    ],
  });
