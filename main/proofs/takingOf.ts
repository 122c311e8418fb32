import { AppError } from "../../app/contract/result.ts";
import { standingOf } from "../../app/proof/plan/nextAct.ts";
import type { Taking } from "../../app/proof/plan/ProofState.ts";
import { type ProofAct, proofActs } from "../../app/proof/plan/proofActs.ts";
import { tolerance } from "../../app/proof/plan/proofSteps.ts";
import { referenceForce } from "../../app/proof/reference/ReferenceTransducer.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { takeRefused } from "./refusals.ts";
import type { LiveTaking } from "./standOf.ts";
import { typedForce } from "./typedForce.ts";
import { forceOfHung, hangFor } from "./weights.ts";
import { zerosBefore } from "./zerosOf.ts";

/** What the caller says beside the streams. */
export type Said = {
  readonly indication?: string | undefined;
  readonly weights?: readonly string[] | undefined;
  readonly reference?: string | undefined;
};

type ReferencePart = Pick<
  Taking,
  "referenceN" | "referenceStandardN" | "referenceShownN" | "referenceTyped" | "weights"
>;

/**
 * What an act's reading brought, from the streams, from weights, or as typed.
 * @throws AppError  a load above the reference's capacity, a typed text that is no force, a weight the rig has not, or a reference that nobody said
 */
export function takingOf(
  draft: ProofDraft,
  index: number,
  live: LiveTaking | undefined,
  said: Said,
  today: string,
): Taking {
  const act = proofActs(draft.planned.plan)[index];
  const typed = said.indication === undefined ? undefined : typedForce(said.indication, draft.unit, "indication");
  const indicationN = typed?.forceN ?? live?.indicationN;
  if (indicationN === undefined) throw new RangeError("a taking needs an indication, read or typed");
  const reference = referencePart(draft, act, index, live, said, today);
  const { transducer, typed: values } = draft.reference;
  const capacityN = transducer?.capacityN ?? values?.capacityN ?? Number.POSITIVE_INFINITY;
  if (reference.referenceN > capacityN * (1 + tolerance.rest)) throw takeRefused("aboveCapacity");
  return {
    indicationN,
    indicationTyped: said.indication,
    n: live?.n ?? 1,
    steady: true, // typed figures are steady by the word of who read them
    ...reference,
  };
}

function referencePart(
  draft: ProofDraft,
  act: ProofAct | undefined,
  index: number,
  live: LiveTaking | undefined,
  said: Said,
  today: string,
): ReferencePart {
  const { reference, about } = draft;
  const targetN = act?.kind === "read" ? act.targetN : 0;
  if (said.reference !== undefined) {
    const { forceN } = typedForce(said.reference, draft.unit, "reference");
    return {
      referenceN: forceN,
      referenceStandardN: typedStandard(draft, forceN, today),
      referenceTyped: said.reference,
    };
  }
  if (reference.weights !== undefined && draft.referenceRead === "weights") {
    const labels = said.weights ?? hangFor(reference.weights, about.conditions, targetN).labels;
    const { forceN, standardN } = forceOfHung(reference.weights, about.conditions, labels);
    return { referenceN: forceN, referenceStandardN: standardN, weights: labels };
  }
  if (reference.transducer !== undefined && live?.referenceShownN !== undefined) {
    const zeroN = zerosBefore(draft.planned, index)?.referenceN ?? 0;
    const { forceN, standardN } = referenceForce(reference.transducer, live.referenceShownN - zeroN, today);
    return { referenceN: forceN, referenceStandardN: standardN, referenceShownN: live.referenceShownN };
  }
  if (targetN === 0) return { referenceN: 0, referenceStandardN: 0 };
  // Creep is read under the load that stands: its reference is the one taken when it was reached.
  const stands =
    act?.kind === "read" && act.step === undefined ? standingOf(draft.planned)[index - 1]?.taking : undefined;
  if (stands !== undefined) return { referenceN: stands.referenceN, referenceStandardN: stands.referenceStandardN };
  throw new AppError("invalid", "Type what the reference shows, with its unit.", {
    key: "proof.referenceMissing",
    field: "reference",
  });
}

/** Typed off a transducer's display the transducer's own uncertainty stands; else what was said of typed values. */
function typedStandard({ reference, referenceRead }: ProofDraft, forceN: number, today: string): number {
  const { transducer, typed } = reference;
  if (transducer !== undefined && referenceRead !== "weights")
    return referenceForce(transducer, forceN, today).standardN;
  return typed === undefined ? 0 : Math.hypot(typed.relative * Math.abs(forceN), typed.standardN);
}
