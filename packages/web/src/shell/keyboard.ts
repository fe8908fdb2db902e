import { useEffect, useRef } from "react";
import { settings } from "../device/settings.ts";

export type KeyHandlers = Readonly<Record<string, (event: KeyboardEvent) => void>>;

/** Innermost last: a screen's keys stand before the frame's. */
const layers: { current: KeyHandlers }[] = [];

const isField = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.closest("input, select, textarea, [contenteditable]") !== null;
const isPressable = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.closest("button, a[href], summary, [role=button], label") !== null;

/**
 * Keys of the keyboard while a screen stands. Letters rest inside fields and where the person switched them off;
 * "digit" stands for 0 to 9, other keys for their names in lower case.
 */
export function useKeys(handlers: KeyHandlers): void {
  const layer = useRef(handlers);
  layer.current = handlers;
  useEffect(() => {
    layers.push(layer);
    return () => {
      layers.splice(layers.indexOf(layer), 1);
    };
  }, []);
}

function handlerFor(event: KeyboardEvent) {
  const name = /^\d$/.test(event.key) ? "digit" : event.key.toLowerCase();
  for (let i = layers.length - 1; i >= 0; i--) {
    const handler = layers[i]?.current[name];
    if (handler) return handler;
  }
  return undefined;
}

/** One listener for the whole house. */
export function listenToKeys(): void {
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
    // An open dialog has the keyboard to itself.
    if (document.querySelector("dialog[open]")) return;
    if (isField(event.target)) return;
    const isLetter = event.key.length === 1 && !/\d/.test(event.key);
    if (isLetter && !settings().letterKeys) return;
    if (event.key === "Enter") {
      if (isPressable(event.target)) return;
      const own = handlerFor(event);
      if (own) own(event);
      else document.querySelector<HTMLElement>("[data-main-key]")?.click();
      event.preventDefault();
      return;
    }
    const handler = handlerFor(event);
    if (!handler) return;
    event.preventDefault();
    handler(event);
  });
}
