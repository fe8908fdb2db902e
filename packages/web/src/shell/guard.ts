/**
 * Water drips twice. A touch within a quarter of a second of a page change was meant for the page before, and is dropped.
 * Key presses are never dropped: nobody drips onto a keyboard in the same way.
 */
export const DROPPED_ms = 250;
/** After the pot changes DONE rests, so that one press in the rain never writes two pots. */
export const INERT_ms = 700;

let changedAt_ms = Number.NEGATIVE_INFINITY;

export function pageChanged(at_ms = performance.now()): void {
  changedAt_ms = at_ms;
  if (typeof document === "undefined") return;
  // The page also says so to styles: nothing can be pressed while it settles.
  const { dataset } = document.documentElement;
  dataset["settling"] = "";
  clearTimeout(settled);
  settled = setTimeout(() => delete dataset["settling"], DROPPED_ms);
}

let settled: ReturnType<typeof setTimeout> | undefined;

export const isDropped = (at_ms: number): boolean => at_ms - changedAt_ms < DROPPED_ms;

export function guardTouches(root: HTMLElement): void {
  const drop = (event: Event) => {
    // A click made by keyboard or reader has no coordinates and no press count.
    if (event instanceof MouseEvent && event.detail === 0) return;
    if (!isDropped(performance.now())) return;
    event.stopPropagation();
    event.preventDefault();
  };
  root.addEventListener("click", drop, { capture: true });
}
