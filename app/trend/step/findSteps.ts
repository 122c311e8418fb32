import { studentCdf } from "../../numerics/studentCdf.ts";
import { type StepScan, scanSteps } from "./scanSteps.ts";
import { scanTwoSteps } from "./scanTwoSteps.ts";
import { sizeStep } from "./sizeStep.ts";
import { stepMemory } from "./stepMemory.ts";

export type Step = {
  /** Positions from 0: last value before and first value after. */
  readonly lastBefore: number;
  readonly firstAfter: number;
  /** After less before, in the unit of y; the slope taken out where there is one. */
  readonly size: number;
  /** 95 % interval of the size; undefined where the residuals have no degree of freedom. */
  readonly low: number | undefined;
  readonly high: number | undefined;
  /** Chance of so great a step anywhere in unchanged values, every place counted. */
  readonly p: number;
  /** False where a plain slope explains the values nearly as well: nothing is cut there. */
  readonly clear: boolean;
};

/**
 * Steps in a history that may also slope. Two questions are asked of a stretch: does a step on top of a line explain
 * more than the line alone; does a step explain more than a constant and more than a line. Either must be rarer
 * than 2 % by Student's t with every possible place counted as a test of its own (the penalty on a step; Bonferroni);
 * then both sides are asked again (binary segmentation). Where neighbours remember one another, t is shortened
 * as the mean of such values is. A step that a line explains nearly as well is listed but
 * not `clear`, and its sides are not searched.
 * @param x  ascending, each finite
 * @param y  as many as `x`, each finite; strays taken out
 * @returns  ascending; none in fewer than six values, since a side needs three, and none where all x are equal
 * @see M. Srivastava and K. J. Worsley, JASA 81 (1986) 199 (greatest t over all places); D. M. Hawkins, JASA 72
 *      (1977) 180; A. J. Scott and M. Knott, Biometrics 30 (1974) 507 (binary segmentation)
 */
export function findSteps(x: Float64Array, y: Float64Array): Step[] {
  if (x.length === 0 || x[0] === x[x.length - 1]) return [];
  const cuts = cutsIn(x, y, 0, x.length, stepMemory(y)).sort((a, b) => a.at - b.at);
  return cuts.map((cut, k) => {
    const from = cuts[k - 1]?.at ?? 0;
    const to = cuts[k + 1]?.at ?? x.length;
    const size = sizeStep(x.subarray(from, to), y.subarray(from, to), cut.at - from);
    return { lastBefore: cut.at - 1, firstAfter: cut.at, p: cut.p, clear: cut.clear, ...size };
  });
}

type Cut = { readonly at: number; readonly p: number; readonly clear: boolean };

const SIDE = 3; // values each side needs: two could be chance, or a stray
const RARE = 0.02;
const NEARLY = 3.5; // twice the log likelihood; a step must beat a line by this to be listed at all
const SURELY = 10; // and by this to cut the history

function cutsIn(x: Float64Array, y: Float64Array, from: number, to: number, memory: number): Cut[] {
  if (to - from < 2 * SIDE) return [];
  const found = cutsOf(x.subarray(from, to), y.subarray(from, to), memory).map((c) => ({ ...c, at: from + c.at }));
  if (!found.some((c) => c.clear)) return found;
  const edges = [from, ...found.map((c) => c.at), to];
  return [
    ...found,
    ...found.flatMap((_, k) => cutsIn(x, y, edges[k]!, edges[k + 1]!, memory)),
    ...cutsIn(x, y, edges.at(-2)!, to, memory),
  ];
}

/** One step; or two the same way, which a line takes for a slope, where they beat the line as a clear step would. */
function cutsOf(x: Float64Array, y: Float64Array, memory: number): Cut[] {
  const scan = scanSteps(x, y, SIDE);
  const one = cutOf(scan, memory);
  if (one?.clear === true) return [one];
  const two = scanTwoSteps(y, SIDE);
  if (two === undefined || !((scan.n * Math.log(scan.line / two.rest)) / memory > 2 * SURELY))
    return one === undefined ? [] : [one];
  const p = (without: number) => chance(without, two.rest, scan.n - 3, scan.places, memory);
  const both = [
    { at: two.first, p: p(two.withoutFirst), clear: true },
    { at: two.second, p: p(two.withoutSecond), clear: true },
  ];
  return both.every((c) => c.p < RARE) ? both : one === undefined ? [] : [one];
}

function cutOf(scan: StepScan, memory: number): Cut | undefined {
  const { n, places } = scan;
  const onLine = chance(scan.line, scan.stepOnLine.rest, n - 3, places, memory);
  if (onLine < RARE) return { at: scan.stepOnLine.at, p: onLine, clear: true };
  const onLevel = chance(scan.level, scan.step.rest, n - 2, places, memory);
  const better = (n * Math.log(scan.line / scan.step.rest)) / memory;
  return onLevel < RARE && better > NEARLY ? { at: scan.step.at, p: onLevel, clear: better > SURELY } : undefined;
}

/** Chance that the best of so many places gains that much, from the sums of squares without and with the step. */
function chance(without: number, within: number, degreesOfFreedom: number, places: number, memory: number): number {
  if (degreesOfFreedom < 1 || !(without > within)) return 1;
  if (!(within > 0)) return 0;
  const t = Math.sqrt((degreesOfFreedom * (without / within - 1)) / memory);
  return Math.min(1, 2 * places * studentCdf(-t, degreesOfFreedom));
}
