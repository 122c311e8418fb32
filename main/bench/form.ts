import type { Draft, Forming, SeriesFigures, Warning } from "../../app/contract/seriesViews.ts";
import type { Budget } from "../../app/correction/Budget.ts";
import { combine } from "../../app/correction/combine.ts";
import { contributionsOf } from "../../app/correction/contributionsOf.ts";
import { type CorrectedForce, correctForce } from "../../app/correction/correctForce.ts";
import { applyZeros } from "../../app/cycle/applyZeros.ts";
import type { Cycle } from "../../app/cycle/Cycle.ts";
import { seriesOf } from "../../app/cycle/seriesOf.ts";
import { judge } from "../../app/verdict/judge.ts";
import { termsOf } from "../../app/verdict/termsOf.ts";
import { uncertaintyOf } from "../../app/verdict/uncertaintyOf.ts";
import { whatSettles } from "../../app/verdict/whatSettles.ts";
import { comparisonWith, type FiledComparison } from "./comparisonWith.ts";
import { correctionsOf, gaugeShares } from "./corrections.ts";
import type { DraftState } from "./DraftState.ts";
import type { FormFacts } from "./FormFacts.ts";
import { warningsBefore } from "./warningsBefore.ts";
import { weaknessesOf } from "./weaknessesOf.ts";

/** Everything that follows from the series in work and today's register. */
export type Formed = {
  /** The state's cycles in order, each with the zero that the whole series gives it. */
  readonly cycles: readonly Cycle[];
  readonly figures: SeriesFigures;
  readonly forming: Forming | undefined;
  readonly warnings: readonly Warning[];
  readonly cannotFile: Draft["cannotFile"];
  readonly baseline: FiledComparison | undefined;
  readonly previous: FiledComparison | undefined;
};

/** From cycles and tag to figures, corrected force, budget and verdict: the same for the forming screen and for filing. */
export function form(state: DraftState, facts: FormFacts): Formed {
  const zeroed = applyZeros(state.cycles.map((c) => c.cycle));
  const counted = zeroed.cycles
    .map((cycle, i) => ({ ...cycle, number: i + 1 }))
    .filter((_, i) => state.cycles[i]!.dropped === undefined);
  const figures = figuresOf(state, seriesOf(counted));
  const value = forceOf(state, facts, figures, counted, zeroed.halfChangeN);
  const filed = value && {
    baseline: facts.baseline && comparisonWith(facts.baseline, value.budget, facts),
    previous: facts.previous && comparisonWith(facts.previous, value.budget, facts),
  };
  const input = value && {
    valueN: value.force.correctedN,
    ...uncertaintyOf(value.budget),
    ...termsOf(facts.spindle, facts.works),
    baseline: filed?.baseline,
    previous: filed?.previous,
  };
  const forming = value &&
    input && {
      valueN: value.force.correctedN,
      budget: value.budget,
      judgement: judge(input),
      weakenedBy: weaknessesOf(state, facts, figures, counted, value),
      settling: whatSettles(input, value.budget.contributions, figures.n),
    };
  const warnings = warningsBefore(state, facts);
  return {
    cycles: zeroed.cycles,
    figures,
    forming,
    warnings,
    cannotFile: obstacle(state, facts, figures, warnings),
    baseline: filed?.baseline,
    previous: filed?.previous,
  };
}

function figuresOf(state: DraftState, series: ReturnType<typeof seriesOf>): SeriesFigures {
  if (state.typed === undefined) return series;
  const { takesN = [] } = state.typed;
  if (takesN.length > 1) {
    const members = takesN.map((forceN, i) => ({ number: i + 1, settledN: forceN, peakN: forceN, flags: [] }));
    return { ...seriesOf(members), basis: "typed" };
  }
  const nothing = { sN: undefined, rangeN: undefined, meanUncertaintyN: undefined, firstDifference: undefined };
  return { n: 1, basis: "typed", meanN: state.typed.valueN, ...nothing, outliers: [], scatter: "unknown" };
}

type Valued = { readonly force: CorrectedForce; readonly budget: Budget };

function forceOf(
  state: DraftState,
  facts: FormFacts,
  figures: SeriesFigures,
  counted: readonly Cycle[],
  halfChangeN: number,
): Valued | undefined {
  const { meanN, n } = figures;
  if (meanN === undefined || !(meanN > 0)) return undefined;
  const corrections = correctionsOf(facts);
  const force = correctForce(meanN, 0, corrections); // the mean is net already
  const single = n === 1 ? counted.find((c) => c.settledN !== undefined) : undefined;
  const contributions = contributionsOf({
    forceN: force.correctedN,
    sensitivity: force.sensitivity,
    repeats: n > 1 ? { n, sN: (figures.sN ?? 0) * force.sensitivity } : { n: 1 },
    earlierScatter: n === 1 ? facts.earlierScatter : undefined,
    holdN: single?.holdUncertaintyN,
    resolutionN: state.typed === undefined ? facts.resolutionN : stepOfText(state.typed.text, state.typed.valueN),
    zero: { noiseN: counted[0]?.restBefore?.standardN, halfChangeN },
    ...gaugeShares(facts, force.netN, state.temperatureC),
  });
  return { force, budget: combine(contributions) };
}

/** The last digit of a typed figure, in newtons: "17.92 kN" resolves 10 N. */
function stepOfText(text: string, valueN: number): number {
  const digits = /[\d.,' ]*\d/.exec(text)?.[0] ?? "";
  const decimals = /[.,](\d+)$/.exec(digits)?.[1]?.length ?? 0;
  const figure = Number(digits.replace(/[' ]/g, "").replace(",", "."));
  return Number.isFinite(figure) && figure > 0 ? valueN / (figure * 10 ** decimals) : 0;
}

function obstacle(
  state: DraftState,
  facts: FormFacts,
  figures: SeriesFigures,
  warnings: readonly Warning[],
): Draft["cannotFile"] {
  if (warnings.some((w) => w.weight === "block")) return "blocked";
  const anything = figures.n > 0 || state.cycles.some((c) => c.dropped === undefined);
  if (!anything) return "nothingMeasured";
  if (facts.spindle === undefined) return "noSpindle";
  if (warnings.some((w) => w.weight === "ask" && w.overriddenWith === undefined)) return "reasonWanted";
  return undefined;
}
