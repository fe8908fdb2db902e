export { ENGINE, forecastsToKeep, isIssueDue, type ToKeep } from "./issue.ts";
export type { Issued, IssuedDays } from "./issued.ts";
export { FORECAST_ISSUED } from "./kinds.ts";
export { FEW_n, type HowGood, howGood, issuedMissing, type Whose } from "./page.ts";
export type { Score } from "./score.ts";
export { type Forecasts, ForecastsError, parseForecasts, printForecasts } from "./text.ts";
