import type { PolynomialFit } from "../../numerics/fitPolynomial.ts";
import { averagedLoads } from "../data/averagedLoads.ts";
import type { NetReading } from "../data/netReadings.ts";
import type { StepUncertainty } from "../uncertainty/StepUncertainty.ts";

/** One load step of a fitted curve. */
export type CurveStep = {
  readonly reference: number;
  readonly n: number;
  /** Mean net indication, the curve there, and the mean of what the curve leaves. */
  readonly net: number;
  readonly fitted: number;
  readonly residual: number;
  readonly uncertainty: StepUncertainty;
};

/**
 * The steps of a curve, by rising load.
 * @param loads  the readings that were fitted, in the order of the fit's residuals
 */
export function curveSteps(
  loads: readonly NetReading[],
  fit: PolynomialFit,
  at: (reference: number) => StepUncertainty,
): readonly CurveStep[] {
  const left = new Map<number, number>();
  for (const [i, load] of loads.entries()) left.set(load.level, (left.get(load.level) ?? 0) + fit.residuals[i]!);
  return averagedLoads(loads).map(({ level, reference, net, n }) => {
    // Not the difference of two large values: that would be rounding where the curve is exact.
    const residual = left.get(level)! / n;
    return { reference, n, net, fitted: net - residual, residual, uncertainty: at(reference) };
  });
}
