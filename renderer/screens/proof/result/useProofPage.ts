import { useEffect, useState } from "react";
import { useStore } from "zustand";
import type { ProofPage } from "../../../../app/contract/proofViews.ts";
import type { Failure } from "../../../../app/contract/result.ts";
import { useCore } from "../../../state/CoreContext.ts";

/** A filed proof with what stands around it; asked for again when gauges have changed (an adjustment, a later proof). */
export function useProofPage(proofId: string): {
  readonly page: ProofPage | undefined;
  readonly failed: Failure | undefined;
} {
  const core = useCore();
  const stale = useStore(core.register, (state) => state.stale.gauges);
  const [state, setState] = useState<{ readonly page?: ProofPage; readonly failed?: Failure }>({});
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again whenever gauges have gone stale
  useEffect(() => {
    let gone = false;
    core.client.call("proofs.get", { proofId }).then((answer) => {
      if (!gone) setState(answer.ok ? { page: answer.value } : { failed: answer.error });
    });
    return () => {
      gone = true;
    };
  }, [core, proofId, stale]);
  return { page: state.page, failed: state.failed };
}
