import type { GaugeCurve } from "./GaugeCurve.ts";

/**
 * Relative standard uncertainty (k = 1) of the force that a gauge's curve gives. Between two proved loads it runs
 * straight. Below the least the newtons of the least stand, not its share: a share would promise more than was proved.
 * Above the greatest its share stands.
 * @param uncertainty  by rising net indication, newtons
 * @param netN  net indication, newtons
 * @returns  a fraction; undefined when the proof states none, or below the least load for an indication that is not above 0
 */
export function curveUncertainty(uncertainty: GaugeCurve["uncertainty"], netN: number): number | undefined {
  const first = uncertainty[0];
  const last = uncertainty.at(-1);
  if (first === undefined || last === undefined) return undefined;
  if (netN < first.atN) return netN > 0 ? (first.relative * first.atN) / netN : undefined;
  if (netN >= last.atN) return last.relative;
  const next = uncertainty.findIndex(({ atN }) => atN > netN);
  const [low, high] = [uncertainty[next - 1]!, uncertainty[next]!];
  return low.relative + ((high.relative - low.relative) * (netN - low.atN)) / (high.atN - low.atN);
}
