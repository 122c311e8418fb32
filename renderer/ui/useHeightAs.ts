import { type RefObject, useLayoutEffect } from "react";

/**
 * Tells the style sheets how high an element is just now, under a name of its own on the root: what floats can then keep off
 * it, and what may shrink knows by how much.
 * @param property  such as `--toasts-height`
 */
export function useHeightAs(property: string, element: RefObject<HTMLElement | null>): void {
  useLayoutEffect(() => {
    const root = document.documentElement;
    const watched = element.current;
    if (watched === null) return;
    const tell = () => root.style.setProperty(property, `${Math.ceil(watched.getBoundingClientRect().height)}px`);
    tell();
    const observer = new ResizeObserver(tell);
    observer.observe(watched);
    return () => {
      observer.disconnect();
      root.style.removeProperty(property);
    };
  }, [property, element]);
}
