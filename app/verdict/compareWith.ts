import { coverageFactorOf } from "./coverageFactorOf.ts";
import { dropFrom, fellBy } from "./dropFrom.ts";
import type { Comparison, JudgeInput, Reason } from "./Judgement.ts";
import type { Test } from "./judge.ts";
import { defaultActDrop, defaultCautionDrop } from "./judgeFault.ts";

type Valued = JudgeInput & { readonly valueN: number };

export type Since = {
  readonly dropFromBaseline: number | undefined;
  readonly dropFromPrevious: number | undefined;
  readonly tests: readonly Test[];
};

/** What baseline and previous check say of a value: the fractions, and each finding with the answer it leads to. */
export function compareWith(input: Valued): Since {
  const baseline = input.baseline && against(input, input.baseline, "Baseline");
  const previous = input.previous && against(input, input.previous, "Previous");
  return {
    dropFromBaseline: baseline?.share,
    dropFromPrevious: previous?.share,
    tests: [...(baseline?.tests ?? []), ...(previous?.tests ?? [])],
  };
}

function against(input: Valued, earlier: Comparison, name: "Baseline" | "Previous"): { share: number; tests: Test[] } {
  const { valueN, standardUncertaintyN, rule, degreesOfFreedom } = input;
  const { share, standard } = dropFrom(valueN, standardUncertaintyN, earlier);
  const act = input.actDrop ?? defaultActDrop;
  const caution = input.cautionDrop ?? defaultCautionDrop;
  const otherN = earlier.valueN;
  const expanded = coverageFactorOf(rule, degreesOfFreedom) * standard;
  const reason = (code: Reason["code"], limit: number): Reason => ({
    code,
    valueN,
    otherN,
    share,
    limitN: otherN * (1 - limit),
  });
  const straddle = (code: Reason["code"], limit: number): Test[] =>
    Math.abs(share - limit) < expanded
      ? [{ leadsTo: "beside", reason: { ...reason(code, limit), expandedN: expanded * otherN } }]
      : [];
  const finding: Test = fellBy(share, act)
    ? { leadsTo: "act", reason: reason(`fellFrom${name}`, act) }
    : fellBy(share, caution)
      ? { leadsTo: "watch", reason: reason(`fellFrom${name}`, caution) }
      : fellBy(-share, caution)
        ? { leadsTo: "watch", reason: reason(`roseFrom${name}`, -caution) }
        : { leadsTo: name === "Baseline" ? "good" : "beside", reason: reason(`holds${name}`, caution) };
  const straddles = [
    ...straddle(`straddlesActFrom${name}`, act),
    ...straddle(`straddlesCautionFrom${name}`, caution),
    ...straddle(`straddlesRiseFrom${name}`, -caution),
  ];
  return { share, tests: [finding, ...straddles] };
}
