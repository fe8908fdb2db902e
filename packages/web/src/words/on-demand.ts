import { type ComponentType, type LazyExoticComponent, lazy } from "react";
import { needPageWords } from "./words.ts";

/** A screen that is fetched (from the cache, offline) when it is wanted, together with the words of the pages. */
export const onDemand = <Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): LazyExoticComponent<ComponentType<Props>> =>
  lazy(async () => {
    const [screen] = await Promise.all([load(), needPageWords()]);
    return { default: screen };
  });
