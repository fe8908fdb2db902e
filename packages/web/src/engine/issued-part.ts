/** Nothing of the first screen: it comes (from the cache, offline) when forecasts are kept as issued, or scored. */
export { forecastsToKeep, isIssueDue, issuedMissing } from "@sillwood/bench/issued";
