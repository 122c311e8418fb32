import { useEffect, useState } from "react";
import type { Input } from "../../../../app/contract/methods.ts";
import type { AffectedView } from "../../../../app/contract/proofViews.ts";
import type { Failure } from "../../../../app/contract/result.ts";
import { useCore } from "../../../state/CoreContext.ts";

export type Doubt = Input<"proofs.affected">;
export type Affected = {
  readonly view: AffectedView | undefined;
  readonly failed: Failure | undefined;
  /** Marks were made: what is marked is another by now. */
  readonly askAgain: () => void;
};

/** The checks that a gauge or an adapter found off puts in doubt. @param doubt  the same object while the same is meant */
export function useAffected(doubt: Doubt): Affected {
  const core = useCore();
  const [state, setState] = useState<{ readonly view?: AffectedView; readonly failed?: Failure }>({});
  const [asked, setAsked] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again after marks were made
  useEffect(() => {
    let gone = false;
    core.client.call("proofs.affected", doubt).then((answer) => {
      if (!gone) setState(answer.ok ? { view: answer.value } : { failed: answer.error });
    });
    return () => {
      gone = true;
    };
  }, [core, doubt, asked]);
  return { view: state.view, failed: state.failed, askAgain: () => setAsked(asked + 1) };
}
