import type { ProofAbout } from "../../app/contract/proofViews.ts";
import type { Proof, Reference } from "../../app/ledger/proof.ts";
import type { Adapter, Gauge } from "../../app/ledger/register.ts";
import type { ProofState } from "../../app/proof/plan/ProofState.ts";
import type { PlanProblem } from "../../app/proof/plan/planProblems.ts";

/** The proof in work as it is kept in the store: everything that is no consequence of something else. */
export type ProofDraft = {
  /** Becomes the filed proof's id: filing twice finds the one already filed. */
  readonly proofId: string;
  readonly as: "found" | "left";
  /** Register as it stood when it was begun. */
  readonly gauge: Gauge;
  readonly adapter: Adapter | undefined;
  readonly reference: Reference;
  readonly operatorId: string | undefined;
  readonly gaugeRead: "live" | "typed";
  readonly referenceRead: "live" | "typed" | "weights";
  readonly auto: boolean;
  readonly about: ProofAbout;
  readonly startedAtMs: number;
  readonly planned: ProofState;
  readonly problems: readonly PlanProblem[];
  /** Unit the gauge showed last. */
  readonly unit: string | undefined;
  readonly offset: Proof["offset"];
};
