import type { PolynomialFit } from "../../numerics/fitPolynomial.ts";
import type { ZeroAndCreep } from "../data/zeroAndCreep.ts";
import { type ProofOptions, referenceShare } from "../method/ProofOptions.ts";
import { type ProofContribution, type StepUncertainty, stepUncertainty } from "../uncertainty/StepUncertainty.ts";
import type { Iso376Errors, Iso376Step } from "./iso376Errors.ts";

export type Iso376Budget = StepUncertainty & {
  /** Expanded with k = 2 as the guide has it, percent of the force; `expanded` has the factor that few series ask for. */
  readonly guideExpandedPct: number;
  /** The same with the reversibility, for use with falling loads; undefined without them. */
  readonly guideExpandedReversiblePct: number | undefined;
};

/**
 * The budget of a step: reference, reproducibility, repeatability, resolution, creep, zero, temperature, interpolation.
 * @param greatest  greatest force, and the deflection the first series showed there
 * @see EURAMET cg-4 v2.0, clause 6; ISO 376:2011, annex C (formulas from memory)
 */
export function iso376Uncertainty(
  step: Iso376Step,
  errors: Iso376Errors,
  fit: PolynomialFit,
  greatest: { readonly force: number; readonly deflection: number },
  { f0, c }: ZeroAndCreep,
  options: ProofOptions,
): Iso376Budget {
  const { reference, mean, deflections } = step;
  const n = deflections.length;
  const squares = deflections.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  const resolution =
    options.resolution === undefined ? undefined : (options.resolution * greatest.force) / greatest.deflection;
  const { temperature } = options;
  const lines: readonly (readonly [ProofContribution["source"], number | undefined, number])[] = [
    ["reference", referenceShare(options, reference), Infinity],
    ["reproducibility", n < 2 ? undefined : Math.sqrt(squares / (n * (n - 1))) / Math.abs(mean), n - 1],
    ["repeatability", part(errors.bPrime, Math.sqrt(3)), Infinity],
    ["resolution", resolution === undefined ? undefined : resolution / reference / Math.sqrt(6), Infinity],
    ["creep", part(c, Math.sqrt(3)), Infinity],
    ["zero", part(f0, 1), Infinity],
    [
      "temperature",
      temperature === undefined ? undefined : (temperature.perKelvin * (temperature.rangeK / 2)) / Math.sqrt(3),
      Infinity,
    ],
    ["interpolation", interpolation(fit, errors.fc, reference, greatest), fit.residualDf],
  ];
  const contributions = lines.flatMap(([source, relative, degreesOfFreedom]) =>
    relative === undefined ? [] : [{ source, standard: Math.abs(relative) * reference, degreesOfFreedom }],
  );
  const budget = stepUncertainty(reference, contributions, 2);
  const standardPct = (100 * budget.standard) / reference;
  const reversible = errors.v === undefined ? undefined : Math.hypot(standardPct, errors.v / Math.sqrt(3));
  return {
    ...budget,
    guideExpandedPct: 2 * standardPct,
    guideExpandedReversiblePct: reversible === undefined ? undefined : 2 * reversible,
  };
}

const part = (percent: number | undefined, divisor: number) =>
  percent === undefined ? undefined : percent / 100 / divisor;

/** By the curve's residuals; by the deviation at the step where there are too few steps for that. */
function interpolation(
  fit: PolynomialFit,
  fc: number,
  reference: number,
  greatest: { readonly force: number; readonly deflection: number },
): number {
  const df = fit.n - fit.degree - 1;
  if (df < 1) return Math.abs(fc) / 100;
  return ((greatest.force / greatest.deflection) * Math.sqrt(fit.residualSumOfSquares / df)) / reference;
}
