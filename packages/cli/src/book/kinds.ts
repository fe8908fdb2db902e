import { acceptedKinds, kindRegistry } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { houseKinds } from "@sillwood/bench/house";

/** Every kind of entry that this program knows: the house's own and those of its crafts. */
export const kinds = kindRegistry([...houseKinds, ...crafts.flatMap((craft) => craft.kinds)]);

/** The same, as the gate into the book sees them. */
export const gate = acceptedKinds(kinds);
