import { type ForceUnit, forceUnits, newtonsPerUnit } from "../quantity/forceUnits.ts";

/** What `mantissa / 10 ** decimals` of a unit is multiplied with, divided by, and multiplied with again, to give newtons. */
export type Scale = { readonly times: number; readonly by: number; readonly factor: number };

/**
 * Between decimal units both steps are one power of ten, so the result is rounded once: 1.005 kN is 1005 N, not
 * 1004.9999999999999. Of other units the figure comes first, to the nearest double, then the unit's factor.
 * @param decimals  -22 to 22; below 0 where an exponent moved the mark
 * @param unitIndex  the unit's place in `forceUnits`; 0 is the newton, which leaves the figure as it was written
 */
export function scaleOf(decimals: number, unitIndex: number): Scale {
  const unit = forceUnits[unitIndex]!;
  const power = decimalUnits[unit];
  const shift = (power ?? 0) - decimals;
  const factor = power === undefined ? newtonsPerUnit[unit] : 1;
  return shift >= 0 ? { times: Number(`1e${shift}`), by: 1, factor } : { times: 1, by: Number(`1e${-shift}`), factor };
}

const decimalUnits: Partial<Record<ForceUnit, number>> = { N: 0, mN: -3, daN: 1, kN: 3, MN: 6, dyn: -5 };
