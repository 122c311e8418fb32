import { useState } from "react";
import { useStore } from "zustand";
import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { NextAct } from "../../../../app/proof/plan/nextAct.ts";
import { useCore, useProgram } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { useKeys } from "../../../ui/keys/useKeys.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { ConnectPanel } from "../../link/ConnectPanel.tsx";
import { proofErrorWords } from "../words/proofErrorWords.ts";
import { GiveUp } from "./LeadDialogs.tsx";
import { leadTexts } from "./leadTexts.ts";
import { ReferencePorts } from "./ReferencePorts.tsx";
import { RemainingList } from "./RemainingList.tsx";
import { useLeadActs } from "./useLeadActs.ts";

/** A proof that waits to be taken up: why, and from where. */
export function PutDownScreen({
  proof,
  next,
}: {
  readonly proof: RunningProof;
  readonly next: Extract<NextAct, { kind: "putDown" }>;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const gaugeThere = useStore(core.link, ({ link }) => link !== undefined && link.state !== "closed");
  const { act, refused, busy } = useLeadActs(proof.proofId);
  const [givingUp, setGivingUp] = useState(false);
  const resume = (from: "here" | "runStart") => act("proof.resume", { from });
  const lost = { linkLost: words.linkLost, referenceLinkLost: words.referenceLost };
  const why = Object.hasOwn(lost, next.reason) ? lost[next.reason as keyof typeof lost] : next.reason; // just found
  useKeys({ keys: { " ": () => resume("here") } });
  return (
    <div className="proof-lead">
      <header className="place">
        <div>
          <h1>{words.title(proof.gauge.name)}</h1>
          <p>{words.remaining(next.remaining)}</p>
        </div>
      </header>
      <div className="stage">
        <div className="task">
          <h2 className="what">{words.isPutDown}</h2>
          <p className="why">{why}</p>
          <p className="why soft">{words.resumeWhy}</p>
          {proof.gaugeRead === "live" && !gaugeThere && <ConnectPanel of={proof.gauge.gaugeId} />}
          {proof.referenceRead === "live" && proof.referenceLink.state === "closed" && (
            <ReferencePorts onOpen={(source) => act("proof.openReference", { source })} />
          )}
          {refused !== undefined && <Problem>{proofErrorWords(refused, speech)}</Problem>}
          <div className="go-on row">
            <Button kind="main" keyHint={words.space} busy={busy} onClick={() => resume("here")}>
              {words.resumeHere}
            </Button>
            <Button busy={busy} onClick={() => resume("runStart")}>
              {words.resumeRun}
            </Button>
          </div>
          <div className="row beside">
            <Button kind="quiet" onClick={() => setGivingUp(true)}>
              {words.giveUp}
            </Button>
          </div>
        </div>
        <RemainingList acts={proof.acts} unit={unit} />
      </div>
      {givingUp && <GiveUp proof={proof} onClose={() => setGivingUp(false)} />}
    </div>
  );
}
