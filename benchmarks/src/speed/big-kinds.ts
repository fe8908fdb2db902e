import { kindRegistry } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { houseKinds } from "@sillwood/bench/house";

/** Every kind that today's app writes. */
export const bigKinds = kindRegistry([...houseKinds, ...crafts.flatMap((craft) => craft.kinds)]);
