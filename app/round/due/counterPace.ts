import { median } from "../../numerics/median.ts";

/**
 * Tool changes a day, from the counters that were noted with checks: the median of the paces between neighbours, so that
 * one miskeyed counter or a replaced control does not decide.
 * @param notes  in time order; days as a number
 * @returns  undefined with fewer than two counters on different days, or when it never rises
 */
export function counterPace(notes: readonly { readonly day: number; readonly counter: number }[]): number | undefined {
  const paces: number[] = [];
  for (let i = 1; i < notes.length; i += 1) {
    const days = notes[i]!.day - notes[i - 1]!.day;
    const changes = notes[i]!.counter - notes[i - 1]!.counter;
    if (days > 0 && changes > 0) paces.push(changes / days);
  }
  return paces.length === 0 ? undefined : median(paces);
}
