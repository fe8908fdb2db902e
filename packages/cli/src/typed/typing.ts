import type { Desk } from "@sillwood/bench/pages";
import type { Calendar } from "@sillwood/bench/places";
import type { UnitSystem } from "@sillwood/bench/words";

/** What reading typed text needs: names of the book, the calendar and units of whoever types, and new ids. */
export interface Typing {
  readonly desk: Desk;
  readonly calendar: Calendar;
  readonly now_ms: number;
  readonly units: UnitSystem;
  newId(): string;
}

/** One `key=value` as it was typed, and where it stands in a file. */
export interface TypedValue {
  readonly key: string;
  readonly text: string;
}
