import type { Comparison, JudgeInput, Limits } from "./Judgement.ts";

/**
 * What is wrong with an input to `judge`, as a sentence that names the field and what to do; undefined when nothing is.
 * Limits must rise: minimum, warning, nominal, maximum, as far as they are given.
 */
export function judgeFault(input: JudgeInput): string | undefined {
  const { valueN, standardUncertaintyN, degreesOfFreedom, rule, cautionDrop, actDrop } = input;
  return (
    finite("valueN", valueN) ??
    (valueN !== undefined && !(standardUncertaintyN > 0 && standardUncertaintyN < Infinity)
      ? `standardUncertaintyN must be above 0, got ${standardUncertaintyN}`
      : undefined) ??
    (degreesOfFreedom !== undefined && !(degreesOfFreedom >= LEAST_DEGREES)
      ? `degreesOfFreedom must be 1 or more, got ${degreesOfFreedom}`
      : undefined) ??
    limitsFault(input.limits) ??
    ruleFault(rule) ??
    comparisonFault("baseline", input.baseline) ??
    comparisonFault("previous", input.previous) ??
    fraction("cautionDrop", cautionDrop) ??
    fraction("actDrop", actDrop)
  );
}

/** One, less what rounding may take off effective degrees of freedom. */
const LEAST_DEGREES = 1 - 1e-9;

/** Common practice, no source; editable. */
export const defaultCautionDrop = 0.1;
export const defaultActDrop = 0.2;

const rising = ["minimumN", "warningN", "nominalN", "maximumN"] as const;

function limitsFault(limits: Limits): string | undefined {
  let last: (typeof rising)[number] | undefined;
  for (const name of rising) {
    const value = limits[name];
    if (value === undefined) continue;
    const fault = finite(`limits.${name}`, value);
    if (fault !== undefined) return fault;
    if (last !== undefined && limits[last]! > value) {
      return `limits.${last} ${limits[last]} lies over limits.${name} ${value}; limits rise from minimum over warning and nominal to maximum`;
    }
    last = name;
  }
  return undefined;
}

function ruleFault({ rule, coverageFactor, guardFactor, threshold }: JudgeInput["rule"]): string | undefined {
  if (coverageFactor !== undefined && !(coverageFactor > 0 && coverageFactor < Infinity)) {
    return `coverageFactor must be above 0, got ${coverageFactor}`;
  }
  if (guardFactor !== undefined && !Number.isFinite(guardFactor))
    return `guardFactor must be a number, got ${guardFactor}`;
  if (guardFactor !== undefined && guardFactor < 0 && rule !== "guarded") {
    // ILAC-G8 knows a band outside the limit ("uncritical") for the two-answer rule alone.
    return `guardFactor must be 0 or more under the rule ${rule}, got ${guardFactor}`;
  }
  if (threshold !== undefined && !(threshold > 0 && threshold < 1))
    return `threshold must lie between 0 and 1, got ${threshold}`;
  return undefined;
}

function comparisonFault(name: string, earlier: Comparison | undefined): string | undefined {
  if (earlier === undefined) return undefined;
  const { valueN, standardUncertaintyN = 0, correlation = 0 } = earlier;
  if (!(valueN > 0 && valueN < Infinity)) return `${name}N must be above 0, got ${valueN}`;
  if (!(standardUncertaintyN >= 0 && standardUncertaintyN < Infinity)) {
    return `${name}StandardUncertaintyN must be 0 or more, got ${standardUncertaintyN}`;
  }
  return Math.abs(correlation) <= 1 ? undefined : `${name}Correlation must lie from -1 to 1, got ${correlation}`;
}

const finite = (name: string, value: number | undefined) =>
  value === undefined || Number.isFinite(value) ? undefined : `${name} must be a finite number, got ${value}`;

const fraction = (name: string, value: number | undefined) =>
  value === undefined || (value >= 0 && value <= 1)
    ? undefined
    : `${name} must be a fraction from 0 to 1, such as 0.1 for 10 %, got ${value}`;
