import { curveAt } from "../../correction/curveAt.ts";
import { curveUncertainty } from "../../correction/curveUncertainty.ts";
import type { GaugeCurve } from "../../correction/GaugeCurve.ts";
import { daysBetween, type PlainDate } from "../data/plainDate.ts";

/** A better instrument in the same load train, with its own calibration. */
export type ReferenceTransducer = {
  readonly curve: GaugeCurve;
  readonly capacityN: number;
  readonly calibratedOn: PlainDate;
  readonly dueOn: PlainDate;
  /** Greatest change in a year, as a share: a half-width. */
  readonly driftPerYear: number;
};

export type ReferenceForce = {
  readonly forceN: number;
  /** k = 1: its calibration, and its drift since. */
  readonly standardN: number;
  readonly problems: readonly (
    | "pastDue"
    | "belowItsRange"
    | "aboveItsRange"
    | "aboveCapacity"
    | "uncertaintyUnknown"
  )[];
};

/**
 * The reference force a transducer shows, by its own curve. What speaks against it is named, not refused: the reading
 * stands, and whoever decides knows.
 * @param netN  its indication less its own zero, newtons
 * @param today  plain date of the reading
 * @throws RangeError  a date that is none, or an indication that is not finite
 */
export function referenceForce(reference: ReferenceTransducer, netN: number, today: PlainDate): ReferenceForce {
  const { curve, capacityN, calibratedOn, dueOn, driftPerYear } = reference;
  const { forceN } = curveAt(curve, netN);
  const relative = curveUncertainty(curve.uncertainty, netN);
  const years = Math.max(0, daysBetween(calibratedOn, today)) / 365.25;
  const drift = (driftPerYear * years) / Math.sqrt(3);
  const problems: ReferenceForce["problems"][number][] = [];
  if (daysBetween(today, dueOn) < 0) problems.push("pastDue");
  if (netN < curve.fromN) problems.push("belowItsRange");
  if (netN > curve.toN) problems.push("aboveItsRange");
  if (forceN > capacityN) problems.push("aboveCapacity");
  if (relative === undefined) problems.push("uncertaintyUnknown");
  return { forceN, standardN: Math.hypot(relative ?? 0, drift) * Math.abs(forceN), problems };
}
