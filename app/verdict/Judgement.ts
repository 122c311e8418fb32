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
  /** k of the expanded uncertainty; default 2, with `iso14253` 1.645. */
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
  readonly valueN: number;
  /** k = 1; above 0. */
  readonly standardUncertaintyN: number;
  /** Effective degrees of freedom of it; absent: very many (normal distribution). */
  readonly degreesOfFreedom?: number | undefined;
  readonly limits: Limits;
  readonly rule: DecisionRule;
  readonly baseline?: Comparison | undefined;
  readonly previous?: Comparison | undefined;
  /** Fractions; defaults 0.1 and 0.2 (common practice, no source). */
  readonly cautionDrop?: number | undefined;
  readonly actDrop?: number | undefined;
};

/**
 * Why, as data: screens put it into the reader's language, `reasonSentence` into English.
 * The first reason of a judgement is the one that decided; the others stand beside it.
 */
export type Reason = {
  readonly code:
    | "noValidForce"
    | "noLimits"
    | "belowMinimum"
    | "aboveMaximum"
    | "fellFromBaseline"
    | "fellFromPrevious"
    | "roseFromBaseline"
    | "roseFromPrevious"
    | "undecidedAtMinimum"
    | "undecidedAtMaximum"
    | "belowWarning"
    | "withinLimits"
    | "holdsBaseline"
    | "straddlesWarning"
    | "straddlesCaution"
    | "straddlesAct";
  /** Forces in newtons, shares as fractions. Which ones a code has stands in `reasonSentence`. */
  readonly valueN?: number | undefined;
  readonly expandedN?: number | undefined;
  readonly limitN?: number | undefined;
  readonly otherN?: number | undefined;
  readonly share?: number | undefined;
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
