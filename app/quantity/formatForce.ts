import { type ForceUnit, fromNewtons, newtonsPerUnit } from "./forceUnits.ts";

/**
 * Decimals a figure in `unit` needs so that one step of `resolutionN` shows: as many as the step has, at most six.
 * A step of 10 N in kN is 0.01, two decimals; a step of 5 N in daN is 0.5, one.
 * @throws RangeError  a resolution that is not above zero
 */
export function forceDecimals(unit: ForceUnit, resolutionN: number): number {
  if (!(resolutionN > 0)) throw new RangeError(`forceDecimals requires a resolution above zero, got ${resolutionN}`);
  const step = resolutionN / newtonsPerUnit[unit];
  for (let decimals = 0; decimals < 6; decimals += 1) {
    const scaled = step * 10 ** decimals;
    // A decimal step divides out; any other (a kN step shown in lbf) ends where one digit is finer than the step.
    if (scaled >= 0.999999 && (Math.abs(scaled - Math.round(scaled)) < 1e-6 * scaled || scaled >= 2)) return decimals;
  }
  return 6;
}

/** Without a resolution: about 0.1 % of what clamping forces are, in that unit. */
const defaultResolutionN = 10;

/**
 * A force as people read it: fixed decimals by the gauge's resolution, a blank, the unit ("17.92 kN").
 * Never "-0.00".
 * @param forceN  finite newtons
 * @param resolutionN  step of the gauge's last digit, newtons; absent: 10 N
 */
export function formatForce(forceN: number, unit: ForceUnit, resolutionN: number = defaultResolutionN): string {
  return `${formatForceFigure(forceN, unit, resolutionN)} ${unitText[unit] ?? unit}`;
}

/** The figure of `formatForce` alone, for tables that carry the unit in their head. */
export function formatForceFigure(forceN: number, unit: ForceUnit, resolutionN: number = defaultResolutionN): string {
  const text = fromNewtons(forceN, unit).toFixed(forceDecimals(unit, resolutionN));
  return /^-[0.]*$/.test(text) ? text.slice(1) : text;
}

const unitText: Partial<Record<ForceUnit, string>> = { tonfShort: "tonf (2000 lbf)", tonfLong: "tonf (2240 lbf)" };
