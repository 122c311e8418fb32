import { type ForceUnit, forceUnits, newtonsPerUnit } from "../quantity/forceUnits.ts";

/**
 * `mantissa / 10 ** decimals` of a unit as newtons. Between decimal units both steps are one power of ten, so the
 * result is rounded once: 1.005 kN is 1005 N, not 1004.9999999999999.
 * @param mantissa  whole, below 2 ** 53
 * @param unitIndex  the unit's place in `forceUnits`; 0 is the newton, which leaves the figure as it was written
 */
export function scaledForce(mantissa: number, decimals: number, unitIndex: number): number {
  const power = tenPowers[unitIndex]!;
  if (power !== notDecimal) {
    const shift = power - decimals;
    return shift >= 0 ? mantissa * powersOfTen[shift]! : mantissa / powersOfTen[-shift]!;
  }
  const value = decimals >= 0 ? mantissa / powersOfTen[decimals]! : mantissa * powersOfTen[-decimals]!;
  return value * factors[unitIndex]!;
}

const notDecimal = 99;
const powersOfTen = Array.from({ length: 30 }, (_, power) => Number(`1e${power}`));
const factors = forceUnits.map((unit) => newtonsPerUnit[unit]);
const decimalUnits: Partial<Record<ForceUnit, number>> = { N: 0, mN: -3, daN: 1, kN: 3, MN: 6, dyn: -5 };
const tenPowers = forceUnits.map((unit) => decimalUnits[unit] ?? notDecimal);
