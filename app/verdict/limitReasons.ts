import { coverageFactorOf } from "./coverageFactorOf.ts";
import type { Conformity, JudgeInput } from "./Judgement.ts";
import type { Test } from "./judge.ts";
import type { Odds } from "./odds.ts";
import { reaches } from "./reaches.ts";
import type { AtLimit } from "./ruleAt.ts";

type Valued = JudgeInput & { readonly valueN: number };

/** What the builder's minimum, maximum and warning say of a value, each with the answer it leads to. */
export function limitReasons(
  input: Valued,
  minimum: AtLimit | undefined,
  maximum: AtLimit | undefined,
  conformity: Conformity,
  odds: Odds | undefined,
): readonly Test[] {
  const sides = [minimum, maximum].filter((side) => side !== undefined);
  const tests = sides.flatMap((side) => atLimit(input, side));
  const { valueN } = input;
  const decided = sides.every((side) => side.conformity === "conforming");
  if (sides.length === 2 && decided && conformity !== "conforming") {
    const between = {
      code: "undecidedBetweenLimits",
      valueN,
      limitN: minimum!.limitN,
      otherN: maximum!.limitN,
    } as const;
    tests.push({ leadsTo: "cannotTell", reason: { ...between, probability: odds!.conforming } });
  } else if (sides.length > 0 && decided) {
    const limitN = (minimum ?? maximum)!.limitN;
    const otherN = minimum && maximum?.limitN;
    tests.push({
      leadsTo: "good",
      reason: { code: "withinLimits", valueN, limitN, otherN, expandedN: sides[0]!.guardN, ...oddsOf(input, odds) },
    });
  }
  return [...tests, ...atWarning(input, minimum)];
}

const oddsOf = ({ rule }: Valued, odds: Odds | undefined) =>
  rule.rule === "probability" ? { probability: odds?.conforming } : {};

function atLimit(input: Valued, side: AtLimit): Test[] {
  const { valueN, rule, standardUncertaintyN: u, degreesOfFreedom } = input;
  const isMinimum = side.side === "minimum";
  const figures = { valueN, limitN: side.limitN, expandedN: side.guardN, ...oddsOf(input, side.odds) };
  if (side.conformity === "undecided") {
    const code = isMinimum ? "undecidedAtMinimum" : "undecidedAtMaximum";
    return [{ leadsTo: "cannotTell", reason: { code, ...figures } }];
  }
  const tests: Test[] = [];
  if (side.conformity === "nonConforming") {
    const inside = reaches(side.marginN, 0, Math.max(Math.abs(valueN), Math.abs(side.limitN)));
    const code = inside
      ? isMinimum
        ? "guardedAtMinimum"
        : "guardedAtMaximum"
      : isMinimum
        ? "belowMinimum"
        : "aboveMaximum";
    tests.push({ leadsTo: isMinimum ? "stop" : "act", reason: { code, ...figures } });
  }
  const expandedN = coverageFactorOf(rule, degreesOfFreedom) * u;
  if (rule.rule === "simple" && Math.abs(side.marginN) < expandedN) {
    const code = isMinimum ? "straddlesMinimum" : "straddlesMaximum";
    tests.push({ leadsTo: "beside", reason: { code, valueN, limitN: side.limitN, expandedN } });
  }
  return tests;
}

/** The warning compares the value itself; the interval is only named. */
function atWarning(input: Valued, minimum: AtLimit | undefined): Test[] {
  const { valueN, limits, rule, standardUncertaintyN, degreesOfFreedom } = input;
  const { warningN } = limits;
  if (warningN === undefined) return [];
  const tests: Test[] = [];
  const size = Math.max(Math.abs(valueN), Math.abs(warningN));
  const saidWorse = minimum?.conformity === "nonConforming";
  if (reaches(valueN, warningN, size)) {
    if (minimum === undefined)
      tests.push({ leadsTo: "good", reason: { code: "aboveWarning", valueN, limitN: warningN } });
  } else if (!saidWorse) tests.push({ leadsTo: "watch", reason: { code: "belowWarning", valueN, limitN: warningN } });
  const expandedN = coverageFactorOf(rule, degreesOfFreedom) * standardUncertaintyN;
  if (Math.abs(valueN - warningN) < expandedN) {
    tests.push({ leadsTo: "beside", reason: { code: "straddlesWarning", valueN, limitN: warningN, expandedN } });
  }
  return tests;
}
