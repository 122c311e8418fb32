import type { MatchStop } from "./MatchStop.ts";

/** Two spindles nearer than so many scatters cannot be told apart by their force. */
export const CLOSE = 3;

/** Whether two expectations are nearer than three scatters of the wider one; one of which nothing is known is near to all. */
export function isClose(a: MatchStop, b: MatchStop): boolean {
  if (a.expected === undefined || b.expected === undefined) return true;
  const apart = Math.abs(Math.log(a.expected.forceN / b.expected.forceN));
  return apart < CLOSE * Math.max(a.expected.scatter, b.expected.scatter);
}

/** For each stop, the positions of the others that are close to it. */
export function closePairs(stops: readonly MatchStop[]): readonly (readonly number[])[] {
  return stops.map((stop, j) => [...stops.keys()].filter((k) => k !== j && isClose(stop, stops[k]!)));
}
