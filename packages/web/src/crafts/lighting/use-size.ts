import { type RefObject, useEffect, useRef, useState } from "react";

interface Size {
  readonly width_px: number;
  /** One rem, so that drawings grow with the words. */
  readonly rem_px: number;
}

/** How wide a box is and how large the words are; undefined until it has been measured. */
export function useSize<Box extends HTMLElement>(): readonly [RefObject<Box | null>, Size | undefined] {
  const box = useRef<Box>(null);
  const [size, setSize] = useState<Size>();
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const measure = () => {
      const rem_px = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
      const width_px = element.clientWidth;
      if (width_px > 0)
        setSize((was) => (was?.width_px === width_px && was.rem_px === rem_px ? was : { width_px, rem_px }));
    };
    measure();
    const sized = new ResizeObserver(measure);
    sized.observe(element);
    return () => sized.disconnect();
  }, []);
  return [box, size];
}
