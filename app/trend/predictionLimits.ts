import { mean } from "../numerics/mean.ts";
import { sampleStdDev } from "../numerics/sampleStdDev.ts";
import { studentQuantile } from "../numerics/studentQuantile.ts";

/**
 * Between which limits the next values lie, all of them, if nothing changes: mean ± t s sqrt(1 + 1/n), with t shared
 * out among the future values (Bonferroni).
 * @param values  an unchanged stretch, each finite; two or more
 * @param future  how many values are to come, 1 and more
 * @param confidence  that all of them lie on the good side
 * @param sides  `one`: each limit holds alone; `two`: between both
 * @throws RangeError  fewer than two values, no future value, or a confidence outside 0 to 1
 * @see EPA 530/R-09-007 18.2 (example 18-1)
 */
export function predictionLimits(
  values: ArrayLike<number>,
  future: number,
  confidence: number,
  sides: "one" | "two",
): { readonly low: number; readonly high: number } {
  if (!(future >= 1 && confidence > 0 && confidence < 1)) {
    throw new RangeError(
      `predictionLimits requires a future value and a confidence below 1, got ${future}, ${confidence}`,
    );
  }
  const n = values.length;
  const middle = mean(values);
  const tail = (1 - confidence) / future / (sides === "two" ? 2 : 1);
  const half = -studentQuantile(tail, n - 1) * sampleStdDev(values) * Math.sqrt(1 + 1 / n);
  return { low: middle - half, high: middle + half };
}
