import type { LinkView } from "../../app/contract/linkViews.ts";
import type { ProofActView, RunningProof } from "../../app/contract/proofViews.ts";
import { nextAct, standingOf } from "../../app/proof/plan/nextAct.ts";
import type { ProofState } from "../../app/proof/plan/ProofState.ts";
import { proofActs } from "../../app/proof/plan/proofActs.ts";
import { cautionsNow } from "../../app/proof/plan/proofCautions.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { hangFor } from "./weights.ts";

/** The proof in work as pages see it. */
export function runningProof(draft: ProofDraft, referenceLink: LinkView): RunningProof {
  const { planned, reference, about } = draft;
  const next = nextAct(planned);
  const target =
    next.kind === "act" && next.act.kind !== "cautions" && next.act.kind !== "mount" ? next.act.targetN : 0;
  return {
    proofId: draft.proofId,
    as: draft.as,
    gauge: draft.gauge,
    adapter: draft.adapter,
    reference,
    operatorId: draft.operatorId,
    about,
    plan: planned.plan,
    startedAtMs: draft.startedAtMs,
    gaugeRead: draft.gaugeRead,
    referenceRead: draft.referenceRead,
    auto: draft.auto,
    next,
    cautions: cautionsNow(planned),
    acts: actViews(planned, next.kind === "act" ? next.index : undefined),
    problems: draft.problems,
    hang:
      reference.weights !== undefined && draft.referenceRead === "weights" && target > 0
        ? hangFor(reference.weights, about.conditions, target)
        : undefined,
    referenceLink,
    canFile: planned.events.some((e) => e.kind === "taken"),
  };
}

function actViews(planned: ProofState, nextIndex: number | undefined): readonly ProofActView[] {
  const standing = standingOf(planned);
  return proofActs(planned.plan).map((act, index) => {
    const reasons = planned.events.flatMap((e) =>
      (e.kind === "repeat" || e.kind === "skipped") && e.act === index ? [e] : [],
    );
    return {
      index,
      act,
      standing: standing[index]!.done ? "done" : index === nextIndex ? "next" : "open",
      taking: standing[index]!.taking,
      repeats: reasons.filter((e) => e.kind === "repeat").length,
      lastReason: reasons.at(-1)?.reason,
    };
  });
}
