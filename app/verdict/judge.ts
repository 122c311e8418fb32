import { compareWith } from "./compareWith.ts";
import type { Conformity, JudgeInput, Judgement, Reason, Verdict, Zone } from "./Judgement.ts";
import { judgeFault } from "./judgeFault.ts";
import { limitReasons } from "./limitReasons.ts";
import { type Odds, oddsBetween } from "./odds.ts";
import { type AtLimit, oddsConformity, ruleAt } from "./ruleAt.ts";

/**
 * One force against its limits and against what it was before. First match decides; a test whose limit or earlier value
 * is absent is skipped:
 * 1. no valid force: `cannotTell`
 * 2. not conforming to the minimum, by the rule: `stop`
 * 3. not conforming to the maximum, or a fall from baseline or previous check at or beyond the act limit: `act`
 * 4. undecided at minimum or maximum: `cannotTell`
 * 5. below the warning, or a fall or rise at or beyond the caution limit: `watch`
 * 6. at least one limit or a baseline exists: `good`; else `cannotTell`. A nominal figure is a target, no limit, and a
 *    previous check alone is no baseline: against them nothing was shown to be good.
 *
 * Warning, fall and rise compare the value itself. Every border counts to the better side for limits and to the worse
 * for falls ("at or beyond"); equal means within 1 part in 1e12, since decimal figures are rounded in binary.
 * @param probability  whether the probability of conformity is to be told under rules that decide without it; going
 *   through a whole works is three times as fast without
 * @throws RangeError  an input that `judgeFault` finds fault with
 * @see JCGM 106:2012 clause 8; ILAC-G8:09/2019; ISO 14253-1:2017
 */
export function judge(input: JudgeInput, probability: "told" | "untold" = "told"): Judgement {
  const fault = judgeFault(input);
  if (fault !== undefined) throw new RangeError(fault);
  const { valueN } = input;
  if (valueN === undefined) return noForce;
  const valued = { ...input, valueN };
  const { minimumN, maximumN } = input.limits;
  const minimum = minimumN === undefined ? undefined : ruleAt(valued, "minimum", minimumN);
  const maximum = maximumN === undefined ? undefined : ruleAt(valued, "maximum", maximumN);
  const needed = probability === "told" || input.rule.rule === "probability";
  const odds = needed ? bothOdds(minimum, maximum) : undefined;
  const conformity = bothConformity(input, minimum, maximum, odds);
  const since = compareWith(valued);
  const tests = [...limitReasons(valued, minimum, maximum, conformity, odds), ...since.tests];
  const { verdict, reasons } = firstMatch(tests);
  return {
    verdict,
    conformity,
    zone: worstZone(minimum?.zone, maximum?.zone),
    probabilityConforming: odds?.conforming,
    dropFromBaseline: since.dropFromBaseline,
    dropFromPrevious: since.dropFromPrevious,
    reasons,
  };
}

/** A reason and the answer it leads to when nothing before it decides; `beside` only stands beside. */
export type Test = { readonly leadsTo: Verdict | "beside"; readonly reason: Reason };

const noForce: Judgement = Object.freeze({
  verdict: "cannotTell",
  conformity: "undecided",
  zone: undefined,
  probabilityConforming: undefined,
  dropFromBaseline: undefined,
  dropFromPrevious: undefined,
  reasons: Object.freeze([Object.freeze({ code: "noValidForce" as const })]),
});

const order = ["stop", "act", "cannotTell", "watch", "good"] as const;

function firstMatch(tests: readonly Test[]): Pick<Judgement, "verdict" | "reasons"> {
  const inOrder = [...order, "beside" as const].flatMap((step) => tests.filter(({ leadsTo }) => leadsTo === step));
  const first = inOrder[0];
  if (first === undefined || first.leadsTo === "beside") {
    return { verdict: "cannotTell", reasons: [{ code: "noLimits" }, ...inOrder.map(({ reason }) => reason)] };
  }
  return { verdict: first.leadsTo, reasons: inOrder.map(({ reason }) => reason) };
}

/** With one limit the odds at it; with both, of lying between them. */
function bothOdds(minimum: AtLimit | undefined, maximum: AtLimit | undefined): Odds | undefined {
  if (minimum === undefined || maximum === undefined) return (minimum ?? maximum)?.odds;
  return oddsBetween(minimum.odds, maximum.odds);
}

function bothConformity(
  { rule }: JudgeInput,
  minimum: AtLimit | undefined,
  maximum: AtLimit | undefined,
  odds: Odds | undefined,
): Conformity {
  if (minimum === undefined && maximum === undefined) return "undecided";
  if (rule.rule === "probability") return oddsConformity(odds!, rule); // there where there is a limit
  const answers = [minimum?.conformity, maximum?.conformity];
  if (answers.includes("nonConforming")) return "nonConforming";
  return answers.includes("undecided") ? "undecided" : "conforming";
}

const zones = ["pass", "conditionalPass", "conditionalFail", "fail"] as const;

function worstZone(one: Zone | undefined, other: Zone | undefined): Zone | undefined {
  return zones.findLast((zone) => zone === one || zone === other);
}
