import { kendallCounts } from "../numerics/kendallCounts.ts";
import { type LeastSquaresLine, leastSquaresLine } from "./leastSquaresLine.ts";
import { type MannKendall, mannKendall } from "./mannKendall.ts";
import { type SerialMemory, serialMemory } from "./serialMemory.ts";
import { neighbourScatter } from "./step/neighbourScatter.ts";
import { type RobustLine, theilSen } from "./theilSen.ts";

/** What a stretch of a history says of its trend. */
export type StretchFit = {
  readonly n: number;
  readonly firstX: number;
  readonly lastX: number;
  readonly lastY: number;
  /** Standard deviation between checks, from neighbours; 0 for one check. */
  readonly scatter: number;
  readonly mannKendall: MannKendall;
  /** The test with memory between neighbours taken into account: its p is the one to act on. */
  readonly memory: SerialMemory;
  /** Undefined where all x are equal. */
  readonly line: RobustLine | undefined;
  /** Yardstick of band and forecast, strays left out; undefined with fewer than three other points or one x. */
  readonly yardstick: LeastSquaresLine | undefined;
};

/**
 * Tests and lines of one stretch.
 * @param x  ascending, each finite; one or more
 * @param y  as many as `x`
 * @param strays  positions in `x` that the yardstick leaves out; the robust line needs no such help
 */
export function fitStretch(x: Float64Array, y: Float64Array, strays: readonly number[] = []): StretchFit {
  const n = x.length;
  const counts = kendallCounts(x, y);
  const test = mannKendall(x, y, counts);
  const line = theilSen(x, y, 0.95, counts);
  const residuals = line === undefined ? new Float64Array(n) : residualsOf(x, y, line);
  return {
    n,
    firstX: x[0]!,
    lastX: x[n - 1]!,
    lastY: y[n - 1]!,
    scatter: n > 1 ? neighbourScatter(y) : 0,
    mannKendall: test,
    memory: serialMemory(residuals, test),
    line,
    yardstick: yardstick(x, y, strays),
  };
}

function residualsOf(x: Float64Array, y: Float64Array, line: RobustLine): Float64Array {
  const residuals = new Float64Array(x.length);
  const x0 = x[0]!;
  const y0 = line.intercept + line.slope * x0; // about the first point: x may be large
  for (let i = 0; i < x.length; i += 1) residuals[i] = y[i]! - y0 - line.slope * (x[i]! - x0);
  return residuals;
}

function yardstick(x: Float64Array, y: Float64Array, strays: readonly number[]): LeastSquaresLine | undefined {
  if (x.length - strays.length < 3) return undefined;
  if (strays.length === 0) return leastSquaresLine(x, y);
  const kept = (_: number, i: number) => !strays.includes(i);
  return leastSquaresLine(x.filter(kept), y.filter(kept));
}
