import type { ProofRefused } from "./ProofOptions.ts";
import { refuse } from "./proofRefusal.ts";

/**
 * Whether readings can carry a curve: as many different loads as coefficients, and a reading over to judge it by.
 * @param forces  number of different load steps
 * @param n  number of readings
 * @returns  undefined when they can, else the reason
 */
export function carriesDegree(forces: number, n: number, degree: number, constant: boolean): ProofRefused | undefined {
  const terms = constant ? degree + 1 : degree;
  if (!Number.isInteger(degree) || degree < 1 || degree > 12) return refuse("degreeRange", degree);
  if (forces < terms) return refuse("tooFewLoads", degree, terms, forces);
  if (n <= terms) return refuse("noReadingOver", degree, terms, n);
  return undefined;
}
