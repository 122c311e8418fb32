import { curveAt } from "../../correction/curveAt.ts";
import { curveUncertainty } from "../../correction/curveUncertainty.ts";
import type { GaugeCurve } from "../../correction/GaugeCurve.ts";

export type CurveChange = {
  readonly atN: number;
  /** Force by the later curve over force by the earlier, less 1: what a reading means more today. */
  readonly relative: number;
  /** Half-width of its 95 % interval from both curves' uncertainties. */
  readonly expanded: number;
};

/**
 * How far two curves of one gauge lie apart, at ten net indications both cover, and which of them is the worst:
 * drift between two proofs, or the effect of an adjustment.
 * @returns  undefined when the curves have no indication above zero in common
 */
export function curveChange(
  earlier: GaugeCurve,
  later: GaugeCurve,
): { readonly points: readonly CurveChange[]; readonly worst: CurveChange } | undefined {
  const from = Math.max(earlier.fromN, later.fromN);
  const to = Math.min(earlier.toN, later.toN);
  if (!(to > from)) return undefined;
  const points = Array.from({ length: COUNT }, (_, i) => {
    // The end first proved may be zero itself, where a ratio says nothing: begin a tenth further on.
    const first = Math.max(from, to / COUNT);
    const atN = first + ((to - first) * i) / (COUNT - 1);
    const relative = curveAt(later, atN).forceN / curveAt(earlier, atN).forceN - 1;
    const expanded =
      1.96 * Math.hypot(curveUncertainty(earlier.uncertainty, atN) ?? 0, curveUncertainty(later.uncertainty, atN) ?? 0);
    return { atN, relative, expanded };
  });
  const worst = points.reduce((most, p) => (Math.abs(p.relative) > Math.abs(most.relative) ? p : most));
  return { points, worst };
}

const COUNT = 10;
