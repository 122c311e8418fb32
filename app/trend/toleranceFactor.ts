import { chiSquareCdf } from "../numerics/chiSquareCdf.ts";
import { findRoot } from "../numerics/findRoot.ts";
import { noncentralStudentCdf } from "../numerics/noncentralStudentCdf.ts";
import { normalQuantile } from "../numerics/normalQuantile.ts";

/**
 * How many standard deviations from the mean a limit must stand so that, with the given confidence, at least the
 * given share of all future values lies on its good side (`one`, exact) or between two such limits (`two`, Howe's
 * approximation).
 * @param n  values the mean and the standard deviation came from, 2 and more
 * @param coverage  share, above 0.5 and below 1
 * @param confidence  above 0 and below 1
 * @throws RangeError  arguments out of range
 * @see NIST/SEMATECH e-Handbook 7.2.6.3; EPA 530/R-09-007 17.2.1; W. G. Howe, JASA 64 (1969) 610
 */
export function toleranceFactor(n: number, coverage: number, confidence: number, sides: "one" | "two"): number {
  if (!(n >= 2 && coverage > 0.5 && coverage < 1 && confidence > 0 && confidence < 1)) {
    throw new RangeError(
      `toleranceFactor requires two values and shares below 1, got ${n}, ${coverage}, ${confidence}`,
    );
  }
  if (sides === "two") {
    const freedom = n - 1;
    const z = normalQuantile((1 + coverage) / 2);
    return z * Math.sqrt((freedom * (1 + 1 / n)) / chiSquareQuantile(1 - confidence, freedom));
  }
  const delta = normalQuantile(coverage) * Math.sqrt(n);
  const miss = (k: number) => noncentralStudentCdf(k * Math.sqrt(n), n - 1, delta) - confidence;
  let high = 4;
  while (miss(high) < 0 && high < 1e6) high *= 2;
  return findRoot(miss, -4, high);
}

function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  let high = degreesOfFreedom + 10;
  while (chiSquareCdf(high, degreesOfFreedom) < p) high *= 2;
  return findRoot((c) => chiSquareCdf(c, degreesOfFreedom) - p, 0, high);
}
