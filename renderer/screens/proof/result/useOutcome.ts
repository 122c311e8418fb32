import { useEffect, useState } from "react";
import type { ProofOutcome, RunningProof } from "../../../../app/contract/proofViews.ts";
import type { Failure } from "../../../../app/contract/result.ts";
import { useCore } from "../../../state/CoreContext.ts";

/** What the readings so far come to, worked out again whenever the proof has changed. */
export function useOutcome(proof: RunningProof): {
  readonly outcome: ProofOutcome | undefined;
  readonly failed: Failure | undefined;
} {
  const core = useCore();
  const [state, setState] = useState<{ readonly outcome?: ProofOutcome; readonly failed?: Failure }>({});
  useEffect(() => {
    let gone = false;
    core.client.call("proof.result", { proofId: proof.proofId }).then((answer) => {
      if (!gone) setState(answer.ok ? { outcome: answer.value } : { failed: answer.error });
    });
    return () => {
      gone = true;
    };
  }, [core, proof]);
  return { outcome: state.outcome, failed: state.failed };
}
