import { useEffect } from "react";

/** What is pointed at may come later than the step, or be made anew: it is looked for this often. */
export const LOOK_AGAIN_MS = 300;

/** Marks the first element of a selector with `data-pointed-at` and brings it into sight once. */
export function usePointAt(selector: string | undefined): void {
  useEffect(() => {
    if (selector === undefined) return;
    let marked: Element | undefined;
    const look = () => {
      const found = document.querySelector(selector) ?? undefined;
      if (found === marked) return;
      marked?.removeAttribute("data-pointed-at");
      if (marked === undefined) found?.scrollIntoView({ block: "center" });
      found?.setAttribute("data-pointed-at", "");
      marked = found;
    };
    look();
    const timer = setInterval(look, LOOK_AGAIN_MS);
    return () => {
      clearInterval(timer);
      marked?.removeAttribute("data-pointed-at");
    };
  }, [selector]);
}
