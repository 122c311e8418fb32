import { type ForceUnit, fromNewtons } from "../../app/quantity/forceUnits.ts";
import { parseDecimal, parseForce } from "../../app/quantity/parseForce.ts";
import { allRunRules, defaultRunRules, type RunRule, zoneRules } from "../../app/trend/control/runRules.ts";
import { UsageError } from "./Command.ts";

/** Options as they were written. */
export type TrendTexts = {
  readonly limit?: readonly string[] | undefined;
  readonly lambda?: string | undefined;
  readonly k?: string | undefined;
  readonly h?: string | undefined;
  readonly target?: string | undefined;
  readonly sigma?: string | undefined;
  readonly "chart-limits"?: string | undefined;
  readonly rules?: string | undefined;
};

export type TrendChoices = {
  readonly limits: readonly { readonly given: string; readonly value: number }[];
  readonly lambda: number;
  readonly k: number;
  readonly h: number;
  readonly target: number | undefined;
  readonly sigma: number | undefined;
  readonly chartLimits: "startup" | "steady";
  readonly rules: readonly RunRule[];
};

/**
 * The options of `holdfast trend`, forces in the unit of the value column.
 * @throws UsageError  a figure that cannot be read or is out of range, a unit that is no force
 */
export function trendChoices(texts: TrendTexts, unit: ForceUnit): TrendChoices {
  return {
    limits: (texts.limit ?? []).map((given) => ({ given, value: force("limit", given, unit) })),
    lambda: figure("lambda", texts.lambda ?? "0.2", (v) => v > 0 && v <= 1, "above 0 and up to 1"),
    k: figure("k", texts.k ?? "0.5", (v) => v >= 0, "0 or more, in units of sigma"),
    h: figure("h", texts.h ?? "5", (v) => v > 0, "above 0, in units of sigma"),
    target: texts.target === undefined ? undefined : force("target", texts.target, unit),
    sigma: texts.sigma === undefined ? undefined : positive("sigma", texts.sigma, unit),
    chartLimits: oneOf("chart-limits", texts["chart-limits"] ?? "startup", ["startup", "steady"] as const),
    rules: rulesNamed(texts.rules ?? "default"),
  };
}

function rulesNamed(text: string): readonly RunRule[] {
  const sets = { default: defaultRunRules, zone: zoneRules, all: allRunRules } as const;
  return sets[oneOf("rules", text, ["default", "zone", "all"] as const)];
}

function oneOf<const T extends string>(option: string, text: string, allowed: readonly T[]): T {
  const found = allowed.find((a) => a === text);
  if (found === undefined) throw new UsageError(`--${option} ${text}: is none of ${allowed.join(", ")}`);
  return found;
}

function figure(option: string, text: string, fits: (v: number) => boolean, range: string): number {
  const value = parseDecimal(text);
  if (value === undefined || !fits(value)) throw new UsageError(`--${option} ${text}: must be a number ${range}`);
  return value;
}

/** A force with its unit, or a bare number in the column's. */
function force(option: string, text: string, unit: ForceUnit): number {
  const parsed = parseForce(text);
  if (parsed.kind === "force") return parsed.unit === unit ? parsed.value : fromNewtons(parsed.forceN, unit);
  if (parsed.kind === "bare") return parsed.value;
  throw new UsageError(`--${option} ${text}: ${parsed.reason}`);
}

function positive(option: string, text: string, unit: ForceUnit): number {
  const value = force(option, text, unit);
  if (!(value > 0)) throw new UsageError(`--${option} ${text}: must be above 0`);
  return value;
}
