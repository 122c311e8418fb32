import { mean } from "../../numerics/mean.ts";
import { sampleStdDev } from "../../numerics/sampleStdDev.ts";

export type PartialSums = {
  /** Last value of the first part, counted from 1: where the sum of the deviations is farthest from 0. */
  readonly index: number;
  /** Range of the sums over s sqrt(n); about 1.27 is rare in a hundred unchanged values (5 %, from memory). */
  readonly rangeTest: number;
  /** Sum of squared sums over s^2 n(n + 1). */
  readonly u: number;
  /** Greatest weighted difference of the two parts' standardised means. */
  readonly homogeneity: number;
  readonly homogeneityIndex: number;
};

/**
 * What the running sum of deviations from the mean tells of a change of level: it runs away from 0 before the change
 * and back after it. Standard deviations have n - 1 in the divisor, as the printed results do.
 * @param values  in the order they came, each finite; three or more
 * @returns  undefined where all values are equal
 * @throws RangeError  fewer than three values, or one that is not finite
 * @see T. A. Buishand, Journal of Hydrology 58 (1982) 11 (range, U); H. Alexandersson, Journal of Climatology 6
 *      (1986) 661 (homogeneity)
 */
export function partialSums(values: ArrayLike<number>): PartialSums | undefined {
  const n = values.length;
  if (n < 3) throw new RangeError(`partialSums requires at least three values, got ${n}`);
  const middle = mean(values);
  const s = sampleStdDev(values);
  if (!(s > 0)) return undefined;
  const found = { index: 0, farthest: -1, homogeneity: -1, homogeneityIndex: 0 };
  let sum = 0;
  let least = 0;
  let most = 0;
  let squares = 0;
  for (let i = 1; i < n; i += 1) {
    sum += (values[i - 1]! - middle) / s;
    least = Math.min(least, sum);
    most = Math.max(most, sum);
    squares += sum * sum;
    if (Math.abs(sum) > found.farthest) {
      found.farthest = Math.abs(sum);
      found.index = i;
    }
    const weighted = (sum * sum) / i + (sum * sum) / (n - i); // the sums of both parts are opposite
    if (weighted > found.homogeneity) {
      found.homogeneity = weighted;
      found.homogeneityIndex = i;
    }
  }
  return {
    index: found.index,
    rangeTest: (most - least) / Math.sqrt(n),
    u: squares / (n * (n + 1)),
    homogeneity: found.homogeneity,
    homogeneityIndex: found.homogeneityIndex,
  };
}
