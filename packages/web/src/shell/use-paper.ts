import { useSyncExternalStore } from "react";

/** The paper that is laid now, also when the system changed it: canvases must be drawn again then. */
export function usePaper(): string {
  return useSyncExternalStore(watch, () => document.documentElement.dataset["paper"] ?? "paper");
}

function watch(listener: () => void): () => void {
  const watcher = new MutationObserver(listener);
  watcher.observe(document.documentElement, { attributeFilter: ["data-paper"] });
  return () => watcher.disconnect();
}
