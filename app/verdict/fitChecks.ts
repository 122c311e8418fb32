import type { Limits } from "./Judgement.ts";
import { reaches } from "./reaches.ts";
import { taperFit } from "./taperFit.ts";

export type FitWarning = {
  readonly code:
    | "taperMismatch"
    | "taperUnsure"
    | "overCapacity"
    | "lowInRange"
    | "coarseResolution"
    | "gaugeUnproved"
    | "proofPastDue"
    | "adapterUncalibrated"
    | "adapterPastDue";
  /** What it is about: a designation, a plain date, or a figure (newtons, or a number of steps) as a decimal text. */
  readonly about: string;
  /** `block`: it would endanger someone or the gauge, no reason overrides it. `ask`: a reason does. `tell`: said, no more. */
  readonly weight: "block" | "ask" | "tell";
};

/** What is known before a series; what is not known is not warned of. */
export type FitFacts = {
  readonly spindle?: { readonly taper: string; readonly limits: Limits } | undefined;
  readonly adapter?:
    | { readonly taper: string; readonly assumed: boolean; readonly dueOn?: string | undefined }
    | undefined;
  readonly gauge?:
    | {
        readonly capacityN: number;
        readonly resolutionN?: number | undefined;
        readonly curve?: object | undefined;
        readonly dueOn?: string | undefined;
      }
    | undefined;
  /** The spindle's baseline or last value, where it has one. */
  readonly lastN?: number | undefined;
  /** Plain date in the works' time zone. */
  readonly today: string;
};

/** Fewest steps of the gauge between nominal and minimum (common practice, no source). */
const LEAST_STEPS = 10;
/** Least share of the capacity at which a gauge is read (common practice, no source). */
const LEAST_SHARE = 0.1;

/**
 * Whether adapter and gauge suit a spindle, asked before the first clamping. A wrong taper and a force over the gauge's
 * capacity block: a part may break or let go. Everything else can be measured with a reason that is kept with the check.
 */
export function fitChecks(facts: FitFacts): readonly FitWarning[] {
  return [...taperChecks(facts), ...rangeChecks(facts), ...proofChecks(facts)];
}

function taperChecks({ spindle, adapter }: FitFacts): FitWarning[] {
  if (spindle === undefined || adapter === undefined || spindle.taper === "" || adapter.taper === "") return [];
  const fit = taperFit(spindle.taper, adapter.taper);
  if (fit === "fits") return [];
  return [
    fit === "doesNotFit"
      ? warning("taperMismatch", adapter.taper, "block")
      : warning("taperUnsure", adapter.taper, "ask"),
  ];
}

function rangeChecks({ spindle, gauge, lastN }: FitFacts): FitWarning[] {
  if (spindle === undefined || gauge === undefined) return [];
  const { minimumN, nominalN, maximumN } = spindle.limits;
  const { capacityN, resolutionN } = gauge;
  const greatestN = Math.max(maximumN ?? 0, nominalN ?? 0, lastN ?? 0);
  const expectedN = lastN ?? nominalN ?? minimumN;
  const found: FitWarning[] = [];
  if (!reaches(capacityN, greatestN, capacityN)) found.push(warning("overCapacity", String(greatestN), "block"));
  if (expectedN !== undefined && !reaches(expectedN, LEAST_SHARE * capacityN, expectedN)) {
    found.push(warning("lowInRange", String(expectedN), "ask"));
  }
  if (resolutionN !== undefined && minimumN !== undefined && nominalN !== undefined) {
    const steps = (nominalN - minimumN) / resolutionN;
    if (!reaches(steps, LEAST_STEPS, nominalN / resolutionN))
      found.push(warning("coarseResolution", String(Math.floor(steps)), "ask"));
  }
  return found;
}

/** The due day itself is not past. Plain dates compare as text. */
function proofChecks({ gauge, adapter, today }: FitFacts): FitWarning[] {
  const found: FitWarning[] = [];
  if (gauge?.dueOn !== undefined && gauge.dueOn < today) found.push(warning("proofPastDue", gauge.dueOn, "ask"));
  else if (gauge !== undefined && gauge.curve === undefined) found.push(warning("gaugeUnproved", "", "tell"));
  if (adapter?.dueOn !== undefined && adapter.dueOn < today)
    found.push(warning("adapterPastDue", adapter.dueOn, "ask"));
  else if (adapter?.assumed === true) found.push(warning("adapterUncalibrated", "", "tell"));
  return found;
}

const warning = (code: FitWarning["code"], about: string, weight: FitWarning["weight"]): FitWarning => ({
  code,
  about,
  weight,
});
