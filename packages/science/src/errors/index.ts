export { QuantityError } from "./quantity-error.ts";
export { unitOfName } from "./unit-of-name.ts";
export { quantityError, within } from "./within.ts";
export { wordsOfName } from "./words-of-name.ts";
