import type { ProofReading } from "../../app/proof/data/ProofReading.ts";

/** Rising readings without labels, as a file with two columns gives them. */
export function plainReadings(reference: readonly number[], indication: readonly number[]): readonly ProofReading[] {
  const none = { direction: "up", run: undefined, step: undefined, positionDeg: undefined } as const;
  return reference.map((force, i) => ({ reference: force, indication: indication[i]!, ...none }));
}
