import { useState } from "react";
import type { ProofOutcome, RunningProof } from "../../../../app/contract/proofViews.ts";
import type { Failure } from "../../../../app/contract/result.ts";
import { proofRefusalWords } from "../../../../app/words/proofRefusalWords.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { go } from "../../../state/routeStore.ts";
import { Button } from "../../../ui/Button.tsx";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { DateField } from "../../../ui/field/DateField.tsx";
import { Tick } from "../../../ui/field/Tick.tsx";
import { useKeys } from "../../../ui/keys/useKeys.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { GiveUp } from "../lead/LeadDialogs.tsx";
import { leadTexts } from "../lead/leadTexts.ts";
import { proofErrorWords } from "../words/proofErrorWords.ts";
import { judgedTexts } from "../words/proofStateTexts.ts";
import { fileTexts } from "./fileTexts.ts";

/** Files the proof: whether its curve is taken into use, and when the next one is due. */
export function FilePanel({ proof, outcome }: { readonly proof: RunningProof; readonly outcome: ProofOutcome }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(fileTexts);
  const lead = useWords(leadTexts);
  const why = useWords(judgedTexts);
  const hasCurve = outcome.result !== undefined && outcome.curveRefused === undefined;
  const [takeCurve, setTakeCurve] = useState(hasCurve && outcome.judged === "good");
  const [dueOn, setDueOn] = useState(outcome.nextDue?.on ?? "");
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<Failure>();
  const [givingUp, setGivingUp] = useState(false);
  const file = async (clockConfirmed: boolean) => {
    if (busy || !proof.canFile) return;
    setBusy(true);
    const answer = await core.client.call("proof.file", {
      proofId: proof.proofId,
      takeCurve: takeCurve && hasCurve,
      ...(dueOn === "" ? {} : { dueOn }),
      ...(clockConfirmed ? { clockConfirmed } : {}),
    });
    setBusy(false);
    if (!answer.ok) return setRefused(answer.error);
    core.proof.setState(({ heard }) => ({ proof: undefined, watch: undefined, heard: heard + 1 }));
    core.toasts.getState().show({ text: words.filed(proof.gauge.name), untilMs: Date.now() + 6_000 });
    go({ place: "proof", proofId: proof.proofId });
  };
  useKeys({ keys: { " ": () => file(false) } });
  return (
    <section className="sheet part stack">
      <div className="fields">
        <DateField
          label={words.dueOn}
          hint={outcome.nextDue === undefined ? undefined : words.dueWhy(why[outcome.nextDue.reason])}
          value={dueOn}
          onText={setDueOn}
        />
        <div>
          {hasCurve ? (
            <Tick checked={takeCurve} onTick={setTakeCurve}>
              {words.takeCurve}
            </Tick>
          ) : (
            outcome.curveRefused !== undefined && (
              <p className="soft">
                {words.curveRefused(
                  proofRefusalWords({ said: outcome.curveRefused, why: outcome.curveRefusedWhy }, speech),
                )}
              </p>
            )
          )}
        </div>
      </div>
      {refused !== undefined && (
        <Problem act={refused.key === "clockBehind" && <Button onClick={() => file(true)}>{words.clock}</Button>}>
          {proofErrorWords(refused, speech)}
        </Problem>
      )}
      <div className="row">
        <Button kind="main" keyHint={lead.space} busy={busy} disabled={!proof.canFile} onClick={() => file(false)}>
          {words.file}
        </Button>
        <span className="soft">{words.fileWhy}</span>
        <Button kind="quiet" onClick={() => setGivingUp(true)}>
          {lead.giveUp}
        </Button>
      </div>
      {givingUp && <GiveUp proof={proof} onClose={() => setGivingUp(false)} />}
    </section>
  );
}
