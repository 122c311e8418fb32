import type { ProofRemark } from "../data/ProofRemark.ts";
import type { Iso376Limits, Iso376Table } from "../tables/iso376Table.ts";
import type { Iso376Errors } from "./iso376Errors.ts";

export type ClassifiedStep = Iso376Errors & {
  readonly reference: number;
  /** Expanded uncertainty (k = 2) of the reference there, percent; undefined when not given. */
  readonly referenceExpanded: number | undefined;
};

export type Iso376Whole = {
  readonly f0: number | undefined;
  readonly c: number | undefined;
  /** Force of one step of the gauge's last digit; undefined when its resolution was not given. */
  readonly resolutionForce: number | undefined;
};

export type Iso376Range = { readonly class: string; readonly from: number; readonly to: number };

export type Iso376Classes = {
  /** Best class each step meets by itself; undefined: none. */
  readonly byStep: readonly (string | undefined)[];
  /** For each class that reaches down far enough, from which force it holds; best first. */
  readonly ranges: readonly Iso376Range[];
  readonly class: string | undefined;
  /** Why there is no class; empty when there is one. */
  readonly missing: readonly ProofRemark[];
};

/**
 * Classes a step's errors into the table. A class holds from the lowest step at and above which every criterion is
 * met, and only if that step lies at or under a fifth of the greatest force. Falling loads are judged by their
 * reversibility; where none were read, by the creep.
 * @param steps  by rising force
 * @param missing  what the method needs and the data lack: then there is no class, and each step's is undefined
 * @see ISO 376:2011, 8.2 (from memory)
 */
export function iso376Class(
  steps: readonly ClassifiedStep[],
  whole: Iso376Whole,
  table: Iso376Table,
  missing: readonly ProofRemark[],
): Iso376Classes {
  const greatest = steps.at(-1)?.reference;
  if (missing.length > 0 || greatest === undefined) {
    return { byStep: steps.map(() => undefined), ranges: [], class: undefined, missing };
  }
  const meets = (step: ClassifiedStep, limits: Iso376Limits) =>
    stepMeets(step, limits) && wholeMeets(whole, step.reference, limits);
  const byStep = steps.map((step) => table.classes.find((limits) => meets(step, limits))?.class);
  const ranges = table.classes.flatMap((limits) => {
    const firstGood = steps.findLastIndex((step) => !meets(step, limits)) + 1;
    const from = steps[firstGood]?.reference;
    // Forces of a fifth are met by nominal loads that may lie a rounding above it.
    return from === undefined || from > table.smallestForceShare * greatest * 1.001
      ? []
      : [{ class: limits.class, from, to: greatest }];
  });
  const found = ranges[0]?.class;
  return { byStep, ranges, class: found, missing: found === undefined ? [noClass(steps, byStep, table)] : [] };
}

/** On the limit is within it; the rounding of a percentage must not decide. */
const within = (value: number, limit: number) => Math.abs(value) <= limit * (1 + 1e-9);
const withinOrUnknown = (value: number | undefined, limit: number) => value === undefined || within(value, limit);

function stepMeets({ b, bPrime, fc, v, referenceExpanded }: ClassifiedStep, limits: Iso376Limits): boolean {
  const known = b !== undefined && bPrime !== undefined;
  return (
    known &&
    within(b, limits.b) &&
    within(bPrime, limits.bPrime) &&
    within(fc, limits.fc) &&
    withinOrUnknown(v, limits.v) &&
    withinOrUnknown(referenceExpanded, limits.referenceExpanded)
  );
}

function wholeMeets({ f0, c, resolutionForce }: Iso376Whole, reference: number, limits: Iso376Limits): boolean {
  return (
    withinOrUnknown(f0, limits.f0) &&
    withinOrUnknown(c, limits.c) &&
    (resolutionForce === undefined || within(limits.resolutionMultiple * resolutionForce, reference))
  );
}

function noClass(
  steps: readonly ClassifiedStep[],
  byStep: readonly (string | undefined)[],
  table: Iso376Table,
): ProofRemark {
  const bad = steps.filter((_, i) => byStep[i] === undefined).map((s) => s.reference);
  if (bad.length > 0) return { code: "outsideClasses", about: `at ${bad.join(", ")}` };
  return {
    code: "rangeTooShort",
    about: `the lowest load must be at most ${100 * table.smallestForceShare} % of the greatest`,
  };
}
