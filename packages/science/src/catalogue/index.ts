import { airCatalogue } from "../air/catalogue.ts";
import { chanceCatalogue } from "../chance/catalogue.ts";
import { feedDoseCatalogue } from "../feed/catalogue-doses.ts";
import { feedSaltCatalogue } from "../feed/catalogue-salts.ts";
import { fruitCatalogue } from "../fruit/catalogue.ts";
import { fruitLoadCatalogue } from "../fruit/catalogue-load.ts";
import { growingPlantCatalogue } from "../growth/catalogue-plant.ts";
import { temperatureCatalogue } from "../growth/catalogue-temperature.ts";
import { crownCatalogue } from "../light/catalogue-crown.ts";
import { lampCatalogue } from "../light/catalogue-lamps.ts";
import { lightReadingCatalogue } from "../light/catalogue-readings.ts";
import { windowCatalogue } from "../light/catalogue-window.ts";
import { potLifeCatalogue } from "../medium/catalogue-pot.ts";
import { potSaltsCatalogue } from "../medium/catalogue-salts.ts";
import { mediumInPotCatalogue } from "../medium/catalogue-shape.ts";
import { pestCatalogue } from "../pests/catalogue.ts";
import { freedomCatalogue } from "../pests/catalogue-freedom.ts";
import { beamCatalogue } from "../shape/catalogue-beam.ts";
import { cutCatalogue } from "../shape/catalogue-cut.ts";
import { photoCatalogue } from "../shape/catalogue-photo.ts";
import { sunCatalogue } from "../sun/catalogue.ts";
import { skyCatalogue } from "../sun/catalogue-sky.ts";
import { unitsCatalogue } from "../units/catalogue.ts";
import { plantCatalogue } from "../water/catalogue-plant.ts";
import { potCatalogue } from "../water/catalogue-pot.ts";
import { referenceEtCatalogue } from "../water/catalogue-reference-et.ts";
import type { ScienceFunction } from "./types.ts";

export type { InputValue, ScienceFunction, ScienceInput, ScienceOutput, ScienceResult } from "./types.ts";

/** Every public function of science that can be run on plain values, by field. A new field adds one line. */
export const catalogue: readonly ScienceFunction[] = [
  ...unitsCatalogue,
  ...airCatalogue,
  ...sunCatalogue,
  ...skyCatalogue,
  ...windowCatalogue,
  ...lampCatalogue,
  ...lightReadingCatalogue,
  ...crownCatalogue,
  ...referenceEtCatalogue,
  ...plantCatalogue,
  ...potCatalogue,
  ...mediumInPotCatalogue,
  ...potLifeCatalogue,
  ...potSaltsCatalogue,
  ...temperatureCatalogue,
  ...growingPlantCatalogue,
  ...fruitLoadCatalogue,
  ...fruitCatalogue,
  ...pestCatalogue,
  ...freedomCatalogue,
  ...cutCatalogue,
  ...beamCatalogue,
  ...photoCatalogue,
  ...feedDoseCatalogue,
  ...feedSaltCatalogue,
  ...chanceCatalogue,
];
