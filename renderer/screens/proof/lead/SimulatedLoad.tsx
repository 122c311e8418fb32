import { useStore } from "zustand";
import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { ProofAct } from "../../../../app/proof/plan/proofActs.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { useKeys } from "../../../ui/keys/useKeys.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { leadTexts } from "./leadTexts.ts";

/** With the simulated gauge there is no rig to load: this does it. */
export function SimulatedLoad({
  proof,
  act,
  unit,
}: {
  readonly proof: RunningProof;
  readonly act: ProofAct;
  readonly unit: ForceUnit;
}) {
  const core = useCore();
  const speech = useSpeech();
  const report = useReport();
  const words = useWords(leadTexts);
  const simulated = useStore(core.link, ({ link }) => link?.source?.kind === "simulated" && link.state !== "closed");
  const offered = simulated && proof.gaugeRead === "live" && (act.kind === "read" || act.kind === "preload");
  const targetN = act.kind === "read" || act.kind === "preload" ? act.targetN : 0;
  const load = () => {
    if (!offered) return;
    const forceN = proof.hang?.forceN ?? targetN;
    report(core.client.call("simulated.command", targetN === 0 ? { command: "unload" } : { command: "load", forceN }));
  };
  useKeys({ keys: { l: load } });
  if (!offered) return null;
  return (
    <div className="row simulated-load">
      <small>{words.simulatedRig}</small>
      <Button keyHint="L" onClick={load}>
        {targetN === 0 ? words.simulatedUnload : words.simulatedLoad(speech.force(targetN, unit))}
      </Button>
    </div>
  );
}
