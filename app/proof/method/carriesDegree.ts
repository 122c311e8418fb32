import type { ProofRefused } from "./ProofOptions.ts";

/**
 * Whether readings can carry a curve: as many different loads as coefficients, and a reading over to judge it by.
 * @param forces  number of different load steps
 * @param n  number of readings
 * @returns  undefined when they can, else the reason
 */
export function carriesDegree(forces: number, n: number, degree: number, constant: boolean): ProofRefused | undefined {
  const terms = constant ? degree + 1 : degree;
  if (!Number.isInteger(degree) || degree < 1 || degree > 12) {
    return { refused: `a curve has a degree from 1 to 12, got ${degree}` };
  }
  if (forces < terms) {
    return {
      refused: `degree ${degree} needs at least ${terms} different loads, the readings have ${forces}: take more loads or a lower degree`,
    };
  }
  if (n <= terms) {
    return {
      refused: `degree ${degree} has ${terms} coefficients and there are ${n} readings: none is left over to judge the curve by`,
    };
  }
  return undefined;
}
