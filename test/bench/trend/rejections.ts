import { kendallNull } from "../../../app/numerics/kendallNull.ts";
import { leastSquaresLine } from "../../../app/trend/leastSquaresLine.ts";
import { mannKendall } from "../../../app/trend/mannKendall.ts";
import { serialMemory } from "../../../app/trend/serialMemory.ts";
import { theilSen } from "../../../app/trend/theilSen.ts";
import { SeededRandom } from "../judgement/SeededRandom.ts";

export type Rejections = {
  readonly n: number;
  readonly runs: number;
  /** Shares of runs without a trend in which the test sees one at 5 %: plain, and with memory taken into account. */
  readonly plain: number;
  readonly corrected: number;
  /** Share of runs answered with cannot tell. */
  readonly untold: number;
};

/** Mann-Kendall on values without a trend; `memory` is their lag-1 autocorrelation. */
export function rejections(n: number, memory: number, runs: number, seed: number): Rejections {
  const random = new SeededRandom(seed);
  const x = Float64Array.from({ length: n }, (_, i) => i);
  const y = new Float64Array(n);
  let [plain, corrected, untold] = [0, 0, 0];
  for (let run = 0; run < runs; run += 1) {
    let last = random.normal();
    for (let i = 0; i < n; i += 1) {
      if (i > 0) last = memory * last + Math.sqrt(1 - memory * memory) * random.normal();
      y[i] = last;
    }
    const test = mannKendall(x, y);
    const line = theilSen(x, y)!;
    const { p } = serialMemory(
      y.map((v, i) => v - line.slope * x[i]!),
      test,
    );
    if (test.p < 0.05) plain += 1;
    if (p === undefined) untold += 1;
    else if (p < 0.05) corrected += 1;
  }
  return { n, runs, plain: plain / runs, corrected: corrected / runs, untold: untold / runs };
}

/** The size an exact test of n untied values can attain at 5 %: the greatest chance of a tail that is under it. */
export function attainableSize(n: number): number {
  const alone = Array.from({ length: n }, () => 1);
  const chances = kendallNull(alone, alone);
  const tails = [...chances.keys()].map((s) =>
    [...chances].reduce((sum, [value, p]) => (Math.abs(value) >= Math.abs(s) ? sum + p : sum), 0),
  );
  return Math.max(0, ...tails.filter((tail) => tail < 0.05));
}

/** Slope by milliseconds since 1970 against slope by days, greatest relative difference, robust and least squares. */
export function slopeByMilliseconds(seed: number): number {
  const random = new SeededRandom(seed);
  const days = Float64Array.from({ length: 60 }, (_, i) => 20_000 + 90 * i + 20 * random.unit());
  const y = days.map((d) => 20_000 - 0.8 * (d - 20_000) + 100 * random.normal());
  const ms = days.map((d) => Math.round(d * 86_400_000));
  const exact = ms.map((t) => t / 86_400_000);
  const apart = (a: number, b: number) => Math.abs((a * 86_400_000) / b - 1);
  return Math.max(
    apart(theilSen(ms, y)!.slope, theilSen(exact, y)!.slope),
    apart(leastSquaresLine(ms, y)!.slope, leastSquaresLine(exact, y)!.slope),
  );
}
