import { useEffect, useState } from "react";
import { useStore } from "zustand";
import type { GaugeProofs } from "../../../../app/contract/proofViews.ts";
import { useCore } from "../../../state/CoreContext.ts";

/** A gauge's proofs, asked for again when gauges have changed; undefined until the first answer. */
export function useGaugeProofs(gaugeId: string): GaugeProofs | undefined {
  const core = useCore();
  const stale = useStore(core.register, (state) => state.stale.gauges);
  const [proofs, setProofs] = useState<GaugeProofs>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again whenever the list has gone stale
  useEffect(() => {
    let gone = false;
    core.client.call("proofs.list", { gaugeId }).then((answer) => {
      if (!gone && answer.ok) setProofs(answer.value);
    });
    return () => {
      gone = true;
    };
  }, [core, gaugeId, stale]);
  return proofs;
}
