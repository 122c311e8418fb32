import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { NextAct } from "../../../../app/proof/plan/nextAct.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { go } from "../../../state/routeStore.ts";
import { Button } from "../../../ui/Button.tsx";
import { Dialog } from "../../../ui/Dialog.tsx";
import { ReasonDialog } from "../../../ui/ReasonDialog.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { actShort } from "../words/actWords.ts";
import { leadTexts } from "./leadTexts.ts";
import { TypeForm } from "./TypeForm.tsx";
import type { Act } from "./useLeadActs.ts";

export type LeadOpen = "type" | "putDown" | "skip" | "giveUp" | { readonly repeat: number };

/** What is asked before an act that stays on record, or that cannot be taken back. */
export function LeadDialogs({
  open,
  proof,
  next,
  unit,
  weights,
  act,
  onClose,
}: {
  readonly open: LeadOpen;
  readonly proof: RunningProof;
  readonly next: Extract<NextAct, { kind: "act" }>;
  readonly unit: ForceUnit;
  readonly weights: { readonly weights?: string[] };
  readonly act: Act;
  readonly onClose: () => void;
}) {
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const common = useWords(commonTexts);
  const after = (answer: Promise<boolean>) => answer.then((ok) => ok && onClose());
  if (typeof open === "object") {
    const step = proof.acts[open.repeat];
    return (
      <ReasonDialog
        title={words.repeatStep(step === undefined ? "" : actShort(step.act, speech, unit))}
        act={words.repeat}
        onReason={(reason) => after(act("proof.repeat", { index: open.repeat, reason }))}
        onClose={onClose}
      >
        {words.repeatWhy}
      </ReasonDialog>
    );
  }
  switch (open) {
    case "type":
      return (
        <Dialog title={words.typeTitle} onClose={onClose} acts={<Button onClick={onClose}>{common.cancel}</Button>}>
          <TypeForm
            proof={proof}
            act={next.act}
            unit={unit}
            busy={false}
            onTake={(typed) => after(act("proof.type", { index: next.index, ...weights, ...typed }))}
          />
        </Dialog>
      );
    case "putDown":
      return (
        <ReasonDialog
          title={words.putDown}
          act={words.putDown}
          onReason={(reason) => act("proof.putDown", { reason })}
          onClose={onClose}
        >
          {words.putDownWhy}
        </ReasonDialog>
      );
    case "skip":
      return (
        <ReasonDialog
          title={words.skip}
          act={words.skip}
          onReason={(reason) => after(act("proof.skip", { index: next.index, reason }))}
          onClose={onClose}
        >
          {words.skipWhy}
        </ReasonDialog>
      );
    case "giveUp":
      return <GiveUp proof={proof} onClose={onClose} />;
  }
}

/** Throws the proof in work away, once it has been asked. */
export function GiveUp({ proof, onClose }: { readonly proof: RunningProof; readonly onClose: () => void }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(leadTexts);
  const common = useWords(commonTexts);
  const discard = async () => {
    if ((await report(core.client.call("proof.discard", { proofId: proof.proofId }))) === undefined) return;
    core.proof.setState(({ heard }) => ({ proof: undefined, watch: undefined, heard: heard + 1 }));
    go({ place: "gauge", gaugeId: proof.gauge.gaugeId });
  };
  return (
    <Dialog
      title={words.giveUp}
      onClose={onClose}
      onSubmit={discard}
      acts={
        <>
          <Button onClick={onClose}>{common.cancel}</Button>
          <Button type="submit">{words.giveUp}</Button>
        </>
      }
    >
      <p className="why">{words.giveUpWhy}</p>
    </Dialog>
  );
}
