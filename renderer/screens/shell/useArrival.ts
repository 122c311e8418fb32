import { useEffect, useRef } from "react";
import { hrefOf, type Route } from "../../state/routeStore.ts";

/**
 * A place begins at its top, and the keyboard and the screen reader begin with it. Going back finds the page where it was left,
 * and a thing found by its label keeps the focus.
 */
export function useArrival(route: Route): void {
  const here = hrefOf(route);
  const last = useRef(here);
  const wentBack = useRef(false);
  useEffect(() => {
    const { navigation } = globalThis as { navigation?: EventTarget }; // not in every browser: there the page begins at its top
    const heard = (event: Event) => {
      wentBack.current = (event as Event & { navigationType?: string }).navigationType === "traverse";
    };
    navigation?.addEventListener("navigate", heard);
    return () => navigation?.removeEventListener("navigate", heard);
  }, []);
  useEffect(() => {
    if (last.current === here) return;
    last.current = here;
    const content = document.getElementById("content");
    const { activeElement } = document;
    if (activeElement?.matches("[data-thing]") === true) return;
    if (!wentBack.current) scrollTo({ top: 0 });
    if (content !== null && content.contains(activeElement) !== true) content.focus({ preventScroll: true });
  }, [here]);
}
