import type { SharedMove } from "./commonMode.ts";
import type { CheckPoint, History } from "./History.ts";
import { type Facts, factsOf } from "./hintFacts.ts";
import { hintPatterns } from "./hintPatterns.ts";
import type { Trend } from "./trendOf.ts";

export type HintPattern =
  | "tiringSprings"
  | "brokenSpring"
  | "dryGripper"
  | "wornGripper"
  | "wrongSetting"
  | "taperChip"
  | "backPressure"
  | "gaugeOff";

/** One observation, with its figures: shares are fractions, of a year where the name says so. */
export type Evidence = {
  readonly code: EvidenceCode;
  /** 1 to 3: how much it says. */
  readonly weight: number;
  readonly share?: number | undefined;
  readonly ratio?: number | undefined;
  readonly p?: number | undefined;
  readonly n?: number | undefined;
  readonly atMs?: number | undefined;
  /** Id of a gauge or adapter, or a kind of service. */
  readonly about?: string | undefined;
};

export type EvidenceCode =
  | "steadyFall"
  | "noStep"
  | "stepBeside"
  | "scatterSteady"
  | "scatterGrows"
  | "scatterAboveLimit"
  | "creepGrows"
  | "creepSteady"
  | "levelLower"
  | "fewChecks"
  | "stepDown"
  | "sizeFitsSprings"
  | "secondStep"
  | "slopeExplains"
  | "fellFromBaseline"
  | "cameBack"
  | "roseAfterCleaning"
  | "cleaningDidNotHelp"
  | "fellAtService"
  | "roseAtSetting"
  | "aboveNominal"
  | "riseIsItsPurpose"
  | "oneOffThenBack"
  | "doesNotReturn"
  | "onlyOnce"
  | "gaugeChangedThen"
  | "adapterChangedThen"
  | "movedWithOthers"
  | "othersSteady";

/** How well a pattern fits what was measured. It is never a verdict, and never what makes one. */
export type Hint = {
  readonly pattern: HintPattern;
  readonly strength: "strong" | "some" | "weak";
  readonly for: readonly Evidence[];
  readonly against: readonly Evidence[];
};

/**
 * Which faults the course resembles, each with what speaks for and against it. Patterns and weights are common
 * practice, no source; a pattern with nothing for it, or more against it than for it, is left out.
 * @param own  checks of the last segment, in order
 * @param sharedMoves  what `commonModes` found; undefined: nobody has looked
 * @returns  the best fitting first
 */
export function hints(
  history: History,
  own: readonly CheckPoint[],
  trend: Omit<Trend, "hints" | "notes">,
  sharedMoves: readonly SharedMove[] | undefined,
): Hint[] {
  if (trend.points.length === 0) return [];
  const facts: Facts = factsOf(history, own, trend, sharedMoves);
  return hintPatterns
    .flatMap(({ pattern, look }) => {
      const { pro, con } = look(facts);
      const net = weigh(pro) - weigh(con);
      return pro.length === 0 || net < 0 ? [] : [{ pattern, net, for: pro, against: con }];
    })
    .sort((a, b) => b.net - a.net)
    .map(({ net, ...hint }) => ({ ...hint, strength: net >= 4 ? "strong" : net >= 2 ? "some" : "weak" }));
}

const weigh = (evidence: readonly Evidence[]) => evidence.reduce((sum, e) => sum + e.weight, 0);
