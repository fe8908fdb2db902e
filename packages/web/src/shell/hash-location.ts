import { useSyncExternalStore } from "react";

/**
 * Pages by the part of the address behind `#`, question mark and all: it works from any server, from a file and offline,
 * and what one page was asked never clings to the next.
 */
const whole = (): string => {
  const path = location.hash.replace(/^#/, "");
  return path.startsWith("/") ? path : `/${path}`;
};
const pathOf = () => whole().split("?")[0] as string;
const searchOf = () => whole().split("?")[1] ?? "";

const listeners = new Set<() => void>();
const tell = () => {
  for (const listener of listeners) listener();
};

function listen(listener: () => void): () => void {
  if (listeners.size === 0) addEventListener("hashchange", tell);
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
    if (listeners.size === 0) removeEventListener("hashchange", tell);
  };
}

export function goTo(to: string, options: { readonly replace?: boolean } = {}): void {
  if (whole() === to) return;
  if (options.replace) history.replaceState(history.state, "", `#${to}`);
  else history.pushState(null, "", `#${to}`);
  tell();
}

export const useHashPath = (): [string, typeof goTo] => [useSyncExternalStore(listen, pathOf), goTo];
useHashPath.hrefs = (href: string) => `#${href}`;

export const useHashSearch = (): string => useSyncExternalStore(listen, searchOf);
