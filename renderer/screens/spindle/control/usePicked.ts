import { type KeyboardEvent, useState } from "react";

/** Which check of a plot is looked at, by pointer or arrow keys. */
export type PickedCheck = {
  /** Position from 0. */
  readonly at: number | undefined;
  readonly pick: (at: number | undefined) => void;
  readonly open: (at: number) => void;
  readonly keys: (event: KeyboardEvent) => void;
};

/** One check at a time of `count`; plots that share it walk together. */
export function usePicked(count: number, open: (at: number) => void): PickedCheck {
  const [chosen, pick] = useState<number>();
  const at = chosen !== undefined && chosen < count ? chosen : undefined; // another chart may hold fewer
  const walk = (to: number) => pick(Math.max(0, Math.min(count - 1, to)));
  const acts = new Map<string, () => void>([
    ["ArrowLeft", () => walk((at ?? count) - 1)],
    ["ArrowRight", () => walk((at ?? -1) + 1)],
    ["Home", () => walk(0)],
    ["End", () => walk(count - 1)],
    ["Enter", () => at !== undefined && open(at)],
    ["Escape", () => pick(undefined)],
  ]);
  const keys = (event: KeyboardEvent) => {
    const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : acts.get(event.key);
    if (act === undefined) return;
    event.preventDefault();
    act();
  };
  return { at, pick, open, keys };
}
