import type { Take } from "./Take.ts";

/** A take that is put aside before matching, with the question about it. */
export type ScreenedTake = {
  readonly take: number;
  readonly code: "torque" | "overload" | "unreadable" | "noClamping" | "dateOutside" | "valueTwice";
  /** The take it repeats. */
  readonly like?: number;
};

export type ScreenFacts = {
  /** The least force any of the spindles is expected to show, newtons; undefined: unknown. */
  readonly leastN: number | undefined;
  /** When the round may have been walked, by the PC's clock; undefined: any time. */
  readonly fromMs: number | undefined;
  readonly toMs: number | undefined;
};

/** Under this share of the least expected force nothing was clamped; common practice, no source. */
const NOTHING = 0.05;
/** The same figure again within this time is one clamping stored twice. */
const TWICE_MS = 5_000;

/**
 * Slips that a take shows by itself or beside its neighbour, before anything is matched: no force, a unit of torque, a take
 * with nothing clamped, a date outside the round, one clamping stored twice. What remains goes to matching.
 * @param order  positions of the takes, oldest first
 */
export function screenTakes(
  takes: readonly Take[],
  order: readonly number[],
  facts: ScreenFacts,
): { readonly kept: readonly number[]; readonly screened: readonly ScreenedTake[] } {
  const kept: number[] = [];
  const screened: ScreenedTake[] = [];
  for (const at of order) {
    const take = takes[at]!;
    const code = slipOf(take, facts);
    const last = kept.at(-1);
    if (code !== undefined) screened.push({ take: at, code });
    else if (last !== undefined && isTwice(takes[last]!, take))
      screened.push({ take: at, code: "valueTwice", like: last });
    else kept.push(at);
  }
  return { kept, screened };
}

function slipOf(
  { refused, valueN, atMs }: Take,
  { leastN, fromMs, toMs }: ScreenFacts,
): ScreenedTake["code"] | undefined {
  if (refused !== undefined) return refused;
  if (valueN === undefined) return "unreadable";
  if (!(valueN > 0) || (leastN !== undefined && valueN < NOTHING * leastN)) return "noClamping";
  if (atMs !== undefined && ((fromMs !== undefined && atMs < fromMs) || (toMs !== undefined && atMs > toMs)))
    return "dateOutside";
  return undefined;
}

function isTwice(a: Take, b: Take): boolean {
  if (a.valueN !== b.valueN || a.location !== b.location || a.atMs === undefined || b.atMs === undefined) return false;
  return b.atMs - a.atMs <= TWICE_MS;
}
