import { useEffect, useLayoutEffect, useRef } from "react";
import { singleKeys } from "./singleKeys.ts";
import { WEDGE_GAP_MS, WedgeReader } from "./WedgeReader.ts";

export type Keys = {
  /** By the letter, in small; `" "` for the space bar and the footswitch that sends it. */
  readonly keys?: Readonly<Record<string, () => void>>;
  readonly onScan?: (label: string) => void;
  /** Enter alone, where nothing that has the focus would take it: a footswitch may send it. */
  readonly onEnter?: () => void;
};

/**
 * The screen's keys and the scanner. Nothing is taken from a field that is being filled in, from an open dialog, from a control that has
 * the focus, or with a modifier held. Single letters can be turned off (WCAG 2.2, 2.1.4); the space bar is kept.
 */
export function useKeys(keys: Keys): void {
  const latest = useRef(keys);
  // Before the screen is painted, not some time after: a key means what is shown, also on a busy computer.
  useLayoutEffect(() => {
    latest.current = keys;
  });
  useEffect(() => {
    const wedge = new WedgeReader();
    let timer: ReturnType<typeof setTimeout> | undefined;
    const single = () => {
      const key = wedge.pause()?.toLowerCase();
      if (key !== undefined && singleKeys.on()) latest.current.keys?.[key]?.();
    };
    const pressed = (event: KeyboardEvent) => {
      if (event.repeat || event.ctrlKey || event.metaKey || event.altKey || isTaken(event)) return;
      const now = event.timeStamp;
      if (event.key === " " && !wedge.inRun(now)) {
        if (isControl(event.target)) return;
        event.preventDefault(); // it would scroll
        latest.current.keys?.[" "]?.();
        return;
      }
      if (event.key === "Enter") {
        const label = wedge.enter(now);
        clearTimeout(timer);
        if (label === undefined) {
          if (!isControl(event.target)) latest.current.onEnter?.();
          return;
        }
        event.preventDefault(); // a scan must not press what has the focus
        latest.current.onScan?.(label);
        return;
      }
      if (event.key.length !== 1) return;
      wedge.key(event.key, now);
      clearTimeout(timer);
      timer = setTimeout(single, WEDGE_GAP_MS);
    };
    addEventListener("keydown", pressed, true);
    return () => {
      clearTimeout(timer);
      removeEventListener("keydown", pressed, true);
    };
  }, []);
}

function isTaken(event: KeyboardEvent): boolean {
  const target = event.target;
  if (document.querySelector("dialog[open]") !== null) return true;
  return (
    target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName))
  );
}

const isControl = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest("button, a, summary, [role=option], [tabindex='0']") !== null;
