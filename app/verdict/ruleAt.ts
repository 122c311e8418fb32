import { guardBandN } from "./guardBandN.ts";
import type { Conformity, DecisionRule, JudgeInput, Zone } from "./Judgement.ts";
import { type Odds, oddsAt } from "./odds.ts";
import { reaches } from "./reaches.ts";

/** What a decision rule says of one value at one limit. */
export type AtLimit = {
  readonly side: "minimum" | "maximum";
  readonly limitN: number;
  /** How far the value lies on the good side; negative beyond the limit. */
  readonly marginN: number;
  readonly guardN: number;
  /** Worked out when it is first asked for: most of the time a judgement takes. */
  readonly odds: Odds;
  readonly conformity: Conformity;
  readonly zone: Zone | undefined;
};

type Valued = JudgeInput & { readonly valueN: number };

/**
 * Judges one limit by itself. A value on a border always counts to the better side.
 * @see ILAC-G8:09/2019 4.2 (guard bands, zones); ISO 14253-1:2017 (from memory); JCGM 106:2012 8.2, 8.3
 */
export function ruleAt(input: Valued, side: AtLimit["side"], limitN: number): AtLimit {
  const marginN = side === "minimum" ? input.valueN - limitN : limitN - input.valueN;
  const guardN = guardBandN(input);
  let known: Odds | undefined;
  const odds = () => {
    known ??= oddsAt(input, marginN);
    return known;
  };
  const size = Math.max(Math.abs(input.valueN), Math.abs(limitN), Math.abs(guardN));
  const zone = input.rule.rule === "ilacG8" ? zoneOf(marginN, guardN, size) : undefined;
  return {
    side,
    limitN,
    marginN,
    guardN,
    get odds() {
      return odds();
    },
    zone,
    conformity: conformityOf(input.rule, marginN, guardN, size, odds, zone),
  };
}

function zoneOf(marginN: number, guardN: number, size: number): Zone {
  if (reaches(marginN, guardN, size)) return "pass";
  if (reaches(marginN, 0, size)) return "conditionalPass";
  return reaches(marginN, -guardN, size) ? "conditionalFail" : "fail";
}

function conformityOf(
  rule: DecisionRule,
  marginN: number,
  guardN: number,
  size: number,
  odds: () => Odds,
  zone: Zone | undefined,
): Conformity {
  switch (rule.rule) {
    case "simple":
    case "guarded":
      return reaches(marginN, guardN, size) ? "conforming" : "nonConforming";
    case "iso14253":
      if (reaches(marginN, guardN, size)) return "conforming";
      return reaches(marginN, -guardN, size) ? "undecided" : "nonConforming";
    case "ilacG8":
      return zone === "pass" ? "conforming" : zone === "fail" ? "nonConforming" : "undecided";
    case "probability":
      return oddsConformity(odds(), rule);
  }
}

/** Sure enough inside, sure enough outside, or neither. */
export function oddsConformity({ conforming, not }: Odds, { threshold = 0.95 }: DecisionRule): Conformity {
  if (reaches(conforming, threshold, 1)) return "conforming";
  return reaches(not, threshold, 1) ? "nonConforming" : "undecided";
}
