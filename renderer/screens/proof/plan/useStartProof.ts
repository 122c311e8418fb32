import { useState } from "react";
import type { Input } from "../../../../app/contract/methods.ts";
import type { Failure } from "../../../../app/contract/result.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { go } from "../../../state/routeStore.ts";

/** Begins a proof and goes to it. What the core refuses stays in sight, and the form as it is. */
export function useStartProof() {
  const core = useCore();
  const [refused, setRefused] = useState<Failure>();
  const [busy, setBusy] = useState(false);
  const start = async (input: Input<"proof.start">) => {
    setBusy(true);
    const answer = await core.client.call("proof.start", input);
    setBusy(false);
    if (!answer.ok) return setRefused(answer.error);
    core.proof.setState(({ heard }) => ({ proof: answer.value, asked: true, heard: heard + 1 }));
    go({ place: "proving" });
  };
  return { start, refused, busy };
}
