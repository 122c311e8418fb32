import { median } from "../../numerics/median.ts";

/**
 * Standard deviation between checks from the differences of neighbours, which a slope hardly touches and a few steps
 * or strays not at all: the median difference, scaled for normal values. A gauge with coarse digits can make that 0;
 * half of what the mean difference gives is the least.
 * @param values  in the order they came, each finite; two or more
 * @throws RangeError  fewer than two values
 */
export function neighbourScatter(values: ArrayLike<number>): number {
  if (values.length < 2) throw new RangeError(`neighbourScatter requires at least two values, got ${values.length}`);
  const steps = new Float64Array(values.length - 1);
  let sum = 0;
  for (let i = 0; i < steps.length; i += 1) {
    steps[i] = Math.abs(values[i + 1]! - values[i]!);
    sum += steps[i]!;
  }
  return Math.max(MEDIAN_TO_SIGMA * median(steps), 0.5 * MEAN_TO_SIGMA * (sum / steps.length));
}

const MEDIAN_TO_SIGMA = 1.048358; // 1 / (normalQuantile(0.75) sqrt(2))
const MEAN_TO_SIGMA = 0.8862269; // sqrt(pi) / 2
