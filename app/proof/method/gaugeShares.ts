import type { ZeroAndCreep } from "../data/zeroAndCreep.ts";
import type { ProofContribution } from "../uncertainty/StepUncertainty.ts";
import { type ProofOptions, referenceShare } from "./ProofOptions.ts";

/**
 * The lines of a step's budget that do not come from its scatter: reference, zero, creep, temperature.
 * Half of the zero's change and the whole creep are half-widths of rectangular distributions.
 * @param reference  the step's force
 * @param greatest  the greatest force of the proof, which zero and creep are related to
 * @returns  only lines whose data are known; all in the reference's unit
 */
export function gaugeShares(
  reference: number,
  greatest: number,
  { f0, c }: ZeroAndCreep,
  options: ProofOptions,
): ProofContribution[] {
  const known = (source: ProofContribution["source"], standard: number | undefined): ProofContribution[] =>
    standard === undefined ? [] : [{ source, standard: Math.abs(standard), degreesOfFreedom: Infinity }];
  const { temperature } = options;
  const share = referenceShare(options, reference);
  return [
    ...known("reference", share === undefined ? undefined : share * reference),
    ...known("zero", f0 === undefined ? undefined : ((f0 / 100) * greatest) / 2 / Math.sqrt(3)),
    ...known("creep", c === undefined ? undefined : ((c / 100) * reference) / Math.sqrt(3)),
    ...known(
      "temperature",
      temperature === undefined
        ? undefined
        : (temperature.perKelvin * (temperature.rangeK / 2) * reference) / Math.sqrt(3),
    ),
  ];
}
