import type { Contribution } from "../correction/Budget.ts";
import { combine } from "../correction/combine.ts";
import type { JudgeInput } from "./Judgement.ts";
import { judge } from "./judge.ts";
import { uncertaintyOf } from "./uncertaintyOf.ts";

/** What would turn `cannotTell` into an answer. */
export type Settling = {
  /** The standard uncertainty (k = 1) below which the same value would be decided; undefined where none is small enough. */
  readonly neededStandardN: number | undefined;
  /** Further clampings that would do if mean and scatter stay as they are; undefined: not within thirty. */
  readonly moreClampings: number | undefined;
  /** A single clamping does not show its scatter: clamp twice more, then it can be said how many are needed. */
  readonly scatterUnknown: boolean;
  /** The greatest part that clamping again does not make smaller: a better proof, another adapter. Undefined where there is none. */
  readonly improve: Contribution["source"] | undefined;
};

/** More clampings than this are no answer on a shop floor (common practice, no source). */
const MOST = 30;

/**
 * What would settle a check that could not be decided at a limit.
 * @param input  as it was judged
 * @param contributions  lines of its budget; none: only the needed uncertainty is told
 * @param n  clampings behind its repeatability
 * @returns  undefined when the verdict is not open, or is open because there is no force or nothing to judge by
 * @see JCGM 100:2008 (GUM) 4.2.3: the standard deviation of a mean falls with √n, the other parts stand
 */
export function whatSettles(
  input: JudgeInput,
  contributions: readonly Contribution[] = [],
  n = 1,
): Settling | undefined {
  const { verdict, reasons } = judge(input);
  if (verdict !== "cannotTell" || !reasons[0]!.code.startsWith("undecided")) return undefined;
  const scatterUnknown = contributions.some(({ source }) => source === "holdNoise");
  const standing = contributions.filter(({ source }) => source !== "repeatability" && source !== "holdNoise");
  return {
    neededStandardN: neededStandard(input),
    moreClampings: scatterUnknown ? 2 : clampings(input, contributions, n),
    scatterUnknown,
    improve: standing.length === 0 ? undefined : combine(standing).dominant,
  };
}

const decided = (input: JudgeInput) => judge(input).verdict !== "cannotTell";

function clampings(input: JudgeInput, contributions: readonly Contribution[], n: number): number | undefined {
  if (!contributions.some(({ source }) => source === "repeatability")) return undefined;
  for (let more = 1; more <= MOST; more += 1) {
    const lines = contributions.map((line) => (line.source === "repeatability" ? repeated(line, n, n + more) : line));
    if (decided({ ...input, ...uncertaintyOf(combine(lines)) })) return more;
  }
  return undefined;
}

/** The scatter of `n` clampings spread over `m`; one taken from earlier checks keeps its degrees of freedom. */
function repeated(line: Contribution, n: number, m: number): Contribution {
  const degreesOfFreedom = n > 1 ? m - 1 : line.degreesOfFreedom;
  return { ...line, standardN: line.standardN * Math.sqrt(n / m), degreesOfFreedom };
}

/** By halving: the rules differ, but each decides for good once the uncertainty is small enough. A value on the limit itself never is. */
function neededStandard(input: JudgeInput): number | undefined {
  const at = (standardUncertaintyN: number) => decided({ ...input, standardUncertaintyN, spread: undefined });
  let [low, high] = [input.standardUncertaintyN * 1e-6, input.standardUncertaintyN];
  if (!at(low)) return undefined;
  if (at(high)) return high; // the shape of the budget left it open, not its size
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (at(middle)) low = middle;
    else high = middle;
  }
  return low;
}
