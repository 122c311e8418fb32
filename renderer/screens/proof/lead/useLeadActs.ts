import { useCallback, useRef, useState } from "react";
import type { Input, MethodName } from "../../../../app/contract/methods.ts";
import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { Failure, Result } from "../../../../app/contract/result.ts";
import { useCore } from "../../../state/CoreContext.ts";

/** Calls that answer the whole proof in work. */
type ProofCall = Extract<
  MethodName,
  | "proof.confirm"
  | "proof.take"
  | "proof.type"
  | "proof.repeat"
  | "proof.skip"
  | "proof.putDown"
  | "proof.resume"
  | "proof.describe"
  | "proof.openReference"
  | "proof.closeReference"
>;
export type Act = <M extends ProofCall>(name: M, rest: Omit<Input<M>, "proofId">) => Promise<boolean>;

/** The acts on the proof that is shown. One at a time: a second press while the first is on its way does nothing. */
export function useLeadActs(proofId: string) {
  const core = useCore();
  const [refused, setRefused] = useState<Failure>();
  const [busy, setBusy] = useState(false);
  const under = useRef(false);
  const act: Act = useCallback(
    async (name, rest) => {
      if (under.current) return false;
      under.current = true;
      setBusy(true);
      const input = { ...rest, proofId } as Input<typeof name>; // the rest and its id make the input whole
      const answer = (await core.client.call(name, input)) as Result<RunningProof>; // each of these answers the proof
      under.current = false;
      setBusy(false);
      setRefused(answer.ok ? undefined : answer.error);
      if (answer.ok) core.proof.setState(({ heard }) => ({ proof: answer.value, heard: heard + 1 }));
      return answer.ok;
    },
    [core, proofId],
  );
  return { act, refused, busy, forget: useCallback(() => setRefused(undefined), []) };
}
