import type { ProofOutcome } from "../../app/contract/proofViews.ts";
import { curveUncertainty } from "../../app/correction/curveUncertainty.ts";
import type { GaugeCurve } from "../../app/correction/GaugeCurve.ts";
import type { Proof } from "../../app/ledger/proof.ts";
import { curveChange } from "../../app/proof/after/curveChange.ts";
import { gaugeCurveOf } from "../../app/proof/after/gaugeCurveOf.ts";
import { defaultIntervalRule, type NextDue } from "../../app/proof/after/nextProofDue.ts";
import type { ProofReading } from "../../app/proof/data/ProofReading.ts";
import { isRefused } from "../../app/proof/method/ProofOptions.ts";
import { refuse } from "../../app/proof/method/proofRefusal.ts";
import { nextAct, standingOf } from "../../app/proof/plan/nextAct.ts";
import { readingsSoFar } from "../../app/proof/plan/proofSteps.ts";
import type { ProofResult } from "../../app/proof/result/ProofResult.ts";
import { type ProofTerms, type Proved, proveReadings } from "../../app/proof/result/proveReadings.ts";
import type { FiledProof } from "../store/records/proofs.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { nextDueOf, provedHistory } from "./provedHistory.ts";

export type Outcome = Omit<ProofOutcome, "nextDue"> & {
  readonly curve: GaugeCurve | undefined;
  readonly nextDue: NextDue | undefined;
};

/**
 * What the readings so far come to: result, curve, and how far the gauge has moved since its curve before.
 * @param earlier  the gauge's filed proofs, oldest first
 * @param today  plain date, for the due date proposed
 * @param tables  those the laboratory has corrected
 */
export function outcomeOf(
  draft: ProofDraft,
  earlier: readonly FiledProof[],
  today: string,
  tables?: ProofTerms["tables"],
): Outcome {
  const { planned, gauge, adapter } = draft;
  const finished = nextAct(planned).kind === "finished";
  const proved = prove(draft, tables);
  if (isRefused(proved)) {
    const none = { result: undefined, curve: undefined, change: null, nextDue: undefined };
    const { refused, why } = proved;
    const said = { refused, refusedWhy: why, curveRefused: refused, curveRefusedWhy: why };
    return { ...none, ...said, judged: "cannotTell", finished };
  }
  const made = curveOf(proved, draft, earlier);
  const curve = isRefused(made) ? undefined : made;
  // What stands in the way of correcting the gauge with it.
  const against = isRefused(made) ? made : adapter === undefined ? undefined : refuse("withAdapter");
  const before = gauge.curve ?? earlier.findLast(({ proof }) => proof.curveTaken)?.proof.curve ?? undefined;
  const change = curve === undefined || before === undefined ? null : (curveChange(before, curve)?.worst ?? null);
  return {
    result: proved.result,
    refused: undefined,
    refusedWhy: undefined,
    curve,
    change,
    judged: judge(proved.result, curve, draft.as === "left" ? null : change),
    curveRefused: against?.refused,
    curveRefusedWhy: against?.why,
    nextDue: curve === undefined || adapter !== undefined ? undefined : dueAfter(draft, curve, earlier, today),
    finished,
  };
}

function prove(draft: ProofDraft, tables: ProofTerms["tables"]) {
  const { planned, about } = draft;
  const { choices, conditions } = about;
  const readings = readingsSoFar(planned);
  if (!readings.some((r) => r.reference > 0 && r.direction === "up")) return refuse("nothingRead");
  return proveReadings(planned.plan.method, readings, {
    options: {
      degree: choices.degree ?? undefined,
      resolution: choices.resolutionN ?? draft.gauge.resolutionN,
      referenceRelative: referenceShareOf(draft, readings),
      temperature:
        choices.perKelvin === null || conditions.temperatureRangeK === null
          ? undefined
          : { perKelvin: choices.perKelvin, rangeK: conditions.temperatureRangeK },
    },
    mpe: choices.mpe ?? undefined,
    rule: choices.rule ?? undefined,
    tables,
  });
}

/** The reference's relative uncertainty over the force, from what each taking says of itself; undefined where none does. */
function referenceShareOf(
  { planned }: ProofDraft,
  readings: readonly ProofReading[],
): ((force: number) => number) | undefined {
  if (readings.length === 0) return undefined;
  const points = standingOf(planned)
    .flatMap(({ taking }) => (taking !== undefined && taking.referenceN > 0 ? [taking] : []))
    .map((t) => ({ atN: t.referenceN, relative: t.referenceStandardN / t.referenceN }))
    .sort((a, b) => a.atN - b.atN);
  if (points.every((p) => p.relative === 0)) return undefined;
  return (force) => curveUncertainty(points, force) ?? points[0]!.relative;
}

function curveOf({ curve }: Proved, { proofId, gauge }: ProofDraft, earlier: readonly FiledProof[]) {
  if (curve === undefined) return refuse("noCurve");
  const versions = [gauge.curve?.version ?? 0, ...earlier.map(({ proof }) => proof.curve?.version ?? 0)];
  const made = gaugeCurveOf(curve, { reference: "N", indication: "N" }, Math.max(...versions) + 1);
  return isRefused(made) ? made : { ...made, proofId };
}

/** Off: an error beyond what is permitted, or a curve that has moved further than the allowed change. */
function judge(result: ProofResult, curve: GaugeCurve | undefined, change: Proof["change"]): Proof["judged"] {
  if (result.conformity === "nonConforming") return "off";
  if (change !== null && Math.abs(change.relative) > defaultIntervalRule.allowed) return "off";
  const asksForClass = result.missing.some((m) => m.code !== "noClassInMethod");
  return curve === undefined || asksForClass || result.conformity === "undecided" ? "cannotTell" : "good";
}

function dueAfter(
  draft: ProofDraft,
  curve: GaugeCurve,
  earlier: readonly FiledProof[],
  today: string,
): NextDue | undefined {
  const history = provedHistory(earlier);
  const last = history.at(-1);
  const next =
    draft.as === "left" && last !== undefined && last.asLeft === undefined
      ? [...history.slice(0, -1), { ...last, on: today, asLeft: curve }]
      : [...history, { on: today, asFound: curve }];
  return nextDueOf(next);
}
