import { median } from "./median.ts";
import { normalCdf } from "./normalCdf.ts";

export type RunsTest = {
  readonly above: number;
  readonly below: number;
  readonly runs: number;
  readonly expectedRuns: number;
  readonly sdRuns: number;
  /** Below 0: fewer runs than chance gives, values cling together; above 0: they swing. */
  readonly z: number;
  /** Two-sided, normal approximation without continuity correction, as in the source. */
  readonly p: number;
};

/**
 * Runs test about the median: do values stand in random order. Values equal to the median are dropped.
 * @param values  in the order they came, each finite
 * @returns  undefined where all values of one side are missing: there is nothing to count
 * @throws RangeError  no value, or one that is not finite
 * @see NIST/SEMATECH e-Handbook 1.3.5.13
 */
export function runsTest(values: ArrayLike<number>): RunsTest | undefined {
  const middle = median(values);
  let above = 0;
  let below = 0;
  let runs = 0;
  let last = 0;
  for (let i = 0; i < values.length; i += 1) {
    const side = Math.sign(values[i]! - middle);
    if (side === 0) continue;
    if (side > 0) above += 1;
    else below += 1;
    if (side !== last) runs += 1;
    last = side;
  }
  if (above === 0 || below === 0) return undefined;
  const n = above + below;
  const product = 2 * above * below;
  const expectedRuns = product / n + 1;
  const sdRuns = Math.sqrt((product * (product - n)) / (n * n * (n - 1)));
  const z = sdRuns > 0 ? (runs - expectedRuns) / sdRuns : 0;
  return { above, below, runs, expectedRuns, sdRuns, z, p: Math.min(1, 2 * normalCdf(-Math.abs(z))) };
}
