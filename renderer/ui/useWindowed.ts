import { type RefObject, useLayoutEffect, useRef, useState } from "react";

/** Up to this many lines all are made: finding in the page and printing then work as ever. */
const ALL_UP_TO = 150;
const SPARE = 12;

type Windowed = {
  readonly body: RefObject<HTMLTableSectionElement | null>;
  readonly from: number;
  readonly to: number;
  /** Height of what is not made, pixels. */
  readonly above: number;
  readonly below: number;
};

/** Which lines of a long table are in sight. All lines have one height; it is measured on the first. */
export function useWindowed(count: number): Windowed {
  const body = useRef<HTMLTableSectionElement>(null);
  const [state, setState] = useState({ from: 0, to: ALL_UP_TO, height: 60 });
  const long = count > ALL_UP_TO;
  useLayoutEffect(() => {
    if (!long) return;
    let frame = 0;
    const look = () => {
      frame = 0;
      const element = body.current;
      if (element === null) return;
      const line = element.querySelector<HTMLElement>("tr:not(.gap)");
      const height = line?.offsetHeight || 60;
      const top = -element.getBoundingClientRect().top;
      const from = Math.max(0, Math.min(count - 1, Math.floor(top / height) - SPARE));
      const to = Math.min(count, from + Math.ceil(innerHeight / height) + 2 * SPARE);
      setState((old) => (old.from === from && old.to === to && old.height === height ? old : { from, to, height }));
    };
    const soon = () => {
      if (frame === 0) frame = requestAnimationFrame(look);
    };
    look();
    addEventListener("scroll", soon, { passive: true });
    addEventListener("resize", soon);
    return () => {
      cancelAnimationFrame(frame);
      removeEventListener("scroll", soon);
      removeEventListener("resize", soon);
    };
  }, [count, long]);
  if (!long) return { body, from: 0, to: count, above: 0, below: 0 };
  const { from, to, height } = state;
  return { body, from, to, above: from * height, below: Math.max(0, count - to) * height };
}
