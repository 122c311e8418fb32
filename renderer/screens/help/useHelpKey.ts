import { useEffect } from "react";
import { hrefOf, type Route } from "../../state/routeStore.ts";
import { helpFor } from "./helpFor.ts";

/** F1 or `?`, on every screen, opens the help that fits it. A question mark typed into a field stays one. */
export function useHelpKey(route: Route): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.key !== "F1" && (event.key !== "?" || isWriting(event.target))) return;
      if (document.querySelector("dialog[open]") !== null) return; // what is asked there would be lost
      event.preventDefault(); // the browser's own help
      location.hash = hrefOf(helpFor(route));
    };
    addEventListener("keydown", pressed);
    return () => removeEventListener("keydown", pressed);
  }, [route]);
}

const isWriting = (target: EventTarget | null) =>
  target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));
