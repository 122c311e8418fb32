import { kendallCounts } from "../../../app/numerics/kendallCounts.ts";
import { mannKendall } from "../../../app/trend/mannKendall.ts";
import { theilSen } from "../../../app/trend/theilSen.ts";
import { SeededRandom } from "../judgement/SeededRandom.ts";

type Points = { readonly x: Float64Array; readonly y: Float64Array };

/** Checks of a coarse gauge at uneven times, on a slope. */
export function courseOfChecks(n: number, seed: number): Points {
  const random = new SeededRandom(seed);
  const x = new Float64Array(n);
  const y = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    x[i] = 1.7e12 + i * 86_400_000 + Math.floor(1e7 * random.unit());
    y[i] = Math.round((18_000 - 0.01 * i + 80 * random.normal()) * 10) / 10;
  }
  return { x, y };
}

/** Test and slope with its interval, as `holdfast trend` asks for them. */
export function testAndSlope({ x, y }: Points) {
  const counts = kendallCounts(x, y);
  return { test: mannKendall(x, y, counts), line: theilSen(x, y, 0.95, counts)! };
}

/** S and the median slope by the definition: every pair, every slope, sorted. */
export function plainTestAndSlope({ x, y }: Points): { s: number; slope: number } {
  const n = x.length;
  const slopes = new Float64Array((n * (n - 1)) / 2);
  let s = 0;
  let k = 0;
  for (let i = 0; i < n; i += 1) {
    for (let j = i + 1; j < n; j += 1) {
      s += Math.sign(y[j]! - y[i]!) * Math.sign(x[j]! - x[i]!);
      slopes[k++] = (y[j]! - y[i]!) / (x[j]! - x[i]!);
    }
  }
  slopes.sort();
  const half = slopes.length >> 1;
  return { s, slope: slopes.length % 2 === 1 ? slopes[half]! : (slopes[half - 1]! + slopes[half]!) / 2 };
}

/** Least seconds of each of several functions, run in turns so that a busy machine hits all alike. */
export function leastSeconds(runs: number, ...work: readonly (() => unknown)[]): number[] {
  const least = work.map(() => Number.POSITIVE_INFINITY);
  for (let run = 0; run < runs; run += 1) {
    for (const [i, one] of work.entries()) {
      const from = performance.now();
      one();
      least[i] = Math.min(least[i]!, (performance.now() - from) / 1000);
    }
  }
  return least;
}
