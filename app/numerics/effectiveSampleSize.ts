import { correlationTime } from "./correlationTime.ts";
import { mean } from "./mean.ts";

/**
 * How many independent readings would tell the mean as well as these do.
 * @param values  equally spaced readings in one unit, each finite; one or more
 * @returns  1 to the number of readings; readings that swing against one another count no more than independent ones
 * @throws RangeError  no reading, or one that is not finite
 * @see JCGM 100:2008 (GUM) 4.2.7 (correlated readings); method: `correlationTime`
 */
export function effectiveSampleSize(values: ArrayLike<number>): number {
  const middle = mean(values);
  const residuals = Float64Array.from(values, (v) => v - middle);
  return Math.max(1, values.length / correlationTime([residuals]).ofMean);
}
