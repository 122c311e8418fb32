import type { Take, TakeGroup } from "./Take.ts";

/** Takes of one visit follow one another at most so far apart; common practice, no source. */
const WITHIN_MS = 75_000;
/** And differ by no more than this share of their mean: over 5 % a series is taken again (common practice, no source). */
const ALIKE = 0.06;

/**
 * Repeated takes put together as visits: neighbours of one location, or, where none is kept, neighbours close in time and
 * alike in value. Without location and time nothing is put together: two spindles that are alike would be.
 * @param order  positions of the takes to look at, oldest first
 */
export function groupTakes(takes: readonly Take[], order: readonly number[]): TakeGroup[] {
  const groups: number[][] = [];
  for (const at of order) {
    const open = groups.at(-1);
    if (open !== undefined && belongs(takes, open, at)) open.push(at);
    else groups.push([at]);
  }
  return groups.map((members) => ({
    takes: members,
    meanN: members.reduce((sum, at) => sum + takes[at]!.valueN!, 0) / members.length,
    atMs: takes[members[0]!]!.atMs,
    location: takes[members[0]!]!.location,
  }));
}

function belongs(takes: readonly Take[], open: readonly number[], at: number): boolean {
  const [last, next] = [takes[open.at(-1)!]!, takes[at]!];
  if (last.location !== next.location) return false;
  if (next.location !== undefined) return true;
  if (last.atMs === undefined || next.atMs === undefined) return false;
  const meanN = open.reduce((sum, k) => sum + takes[k]!.valueN!, 0) / open.length;
  return next.atMs - last.atMs <= WITHIN_MS && Math.abs(next.valueN! - meanN) <= ALIKE * meanN;
}
