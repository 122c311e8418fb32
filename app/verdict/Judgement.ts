import type { Spread } from "../correction/Spread.ts";

/** The five answers, worst last but one: `cannotTell` stands beside the order. */
export type Verdict = "good" | "watch" | "act" | "stop" | "cannotTell";

/** The builder's figures in newtons at the taper; each may be absent. */
export type Limits = {
  readonly minimumN?: number | undefined;
  readonly warningN?: number | undefined;
  readonly nominalN?: number | undefined;
  readonly maximumN?: number | undefined;
};

export type RuleName = "simple" | "guarded" | "iso14253" | "ilacG8" | "probability";

export type DecisionRule = {
  readonly rule: RuleName;
  /** k of the expanded uncertainty; absent: 2, with `iso14253` 1.645, widened by Student's t where the degrees of freedom are few. */
  readonly coverageFactor?: number | undefined;
  /** r of the guard band r x U; default 1. */
  readonly guardFactor?: number | undefined;
  /** Least probability of conformity for `probability`; default 0.95. */
  readonly threshold?: number | undefined;
};

export type Conformity = "conforming" | "nonConforming" | "undecided";
export type Zone = "pass" | "conditionalPass" | "conditionalFail" | "fail";

/** Something to compare with: its value, its own standard uncertainty, and how far its errors are the same errors. */
export type Comparison = {
  readonly valueN: number;
  readonly standardUncertaintyN?: number | undefined;
  readonly correlation?: number | undefined;
};

export type JudgeInput = {
  /** Undefined: there was no valid force. */
  readonly valueN: number | undefined;
  /** k = 1; above 0. Without meaning when there was no valid force. */
  readonly standardUncertaintyN: number;
  /** Effective degrees of freedom of it; absent: very many (normal distribution). */
  readonly degreesOfFreedom?: number | undefined;
  /** Shape of the uncertainty, from its budget; absent: normal, or t with the degrees of freedom. */
  readonly spread?: Spread | undefined;
  readonly limits: Limits;
  readonly rule: DecisionRule;
  readonly baseline?: Comparison | undefined;
  readonly previous?: Comparison | undefined;
  /** Fractions; defaults 0.1 and 0.2 (common practice, no source). */
  readonly cautionDrop?: number | undefined;
  readonly actDrop?: number | undefined;
};

export type ReasonCode =
  | "noValidForce"
  | "noLimits" // no limit and no baseline to judge by
  | "belowMinimum" // by the rule, and the value itself lies below
  | "aboveMaximum"
  | "guardedAtMinimum" // the value lies inside, but not by the guard band or probability the rule asks for
  | "guardedAtMaximum"
  | "fellFromBaseline"
  | "fellFromPrevious"
  | "roseFromBaseline"
  | "roseFromPrevious"
  | "undecidedAtMinimum"
  | "undecidedAtMaximum"
  | "undecidedBetweenLimits" // either limit alone would be met, both together are not sure enough
  | "belowWarning"
  | "withinLimits"
  | "aboveWarning" // no minimum or maximum is known, the warning limit is
  | "holdsBaseline"
  | "holdsPrevious"
  | "straddlesMinimum" // only under `simple`: the other rules have an answer for it
  | "straddlesMaximum"
  | "straddlesWarning"
  | "straddlesCautionFromBaseline"
  | "straddlesCautionFromPrevious"
  | "straddlesActFromBaseline"
  | "straddlesActFromPrevious"
  | "straddlesRiseFromBaseline"
  | "straddlesRiseFromPrevious";

/**
 * Why, as data: screens put it into the reader's language, `reasonSentence` into English.
 * The first reason of a judgement is the one that decided; the others stand beside it.
 */
export type Reason = {
  readonly code: ReasonCode;
  /** The value judged, newtons. */
  readonly valueN?: number | undefined;
  /** At a limit: the guard band of the rule. At a straddle: half the interval, newtons. */
  readonly expandedN?: number | undefined;
  /** The limit; for a fall or rise, the force at which the rule speaks. */
  readonly limitN?: number | undefined;
  /** What the value is compared with; with `withinLimits`, the maximum where both limits exist. */
  readonly otherN?: number | undefined;
  /** The fall as a fraction, a rise negative. */
  readonly share?: number | undefined;
  /** Of conforming to that limit, where the rule asks for one. */
  readonly probability?: number | undefined;
};

export type Judgement = {
  readonly verdict: Verdict;
  readonly conformity: Conformity;
  /** Only under `ilacG8`. */
  readonly zone: Zone | undefined;
  /** Undefined when neither minimum nor maximum is given. */
  readonly probabilityConforming: number | undefined;
  /** Fractions, down is positive; undefined without the comparison. */
  readonly dropFromBaseline: number | undefined;
  readonly dropFromPrevious: number | undefined;
  readonly reasons: readonly Reason[];
};
