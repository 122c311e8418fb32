/**
 * Force units with their exact factors, as decimal numbers. Where the factor has more digits than a double
 * holds, the nearest double stands (relative error under 1.2e-16).
 * @see NIST SP 811 (2008), appendix B.8 and B.9; they follow from the pound 0.45359237 kg, the foot 0.3048 m
 *      and standard gravity 9.80665 m/s2, all exact by definition
 */
export const newtonsPerUnit = {
  N: 1,
  mN: 0.001,
  daN: 10,
  kN: 1000,
  MN: 1_000_000,
  dyn: 0.00001,
  gf: 0.00980665,
  kgf: 9.80665,
  tf: 9806.65, // metric ton-force
  ozf: 4.4482216152605 / 16, // a sixteenth is exact in binary
  lbf: 4.4482216152605,
  kip: 4448.2216152605,
  pdl: 0.138254954376,
  tonfShort: 8896.443230521, // 2000 lbf
  tonfLong: 9964.01641818352, // 2240 lbf
} as const;

export type ForceUnit = keyof typeof newtonsPerUnit;

/** Every unit, in the order a list shows them. */
export const forceUnits = Object.freeze(Object.keys(newtonsPerUnit)) as readonly ForceUnit[]; // keys of the literal above

/** A figure in `unit` as newtons; relative error at most one rounding of factor and product each. */
export function toNewtons(value: number, unit: ForceUnit): number {
  return value * newtonsPerUnit[unit];
}

/** Newtons as a figure in `unit`. Back through `toNewtons` it is within one unit in the last place of `forceN`. */
export function fromNewtons(forceN: number, unit: ForceUnit): number {
  return forceN / newtonsPerUnit[unit];
}
