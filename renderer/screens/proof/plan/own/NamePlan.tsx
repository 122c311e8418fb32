import { useState } from "react";
import type { StoredPlan } from "../../../../../app/ledger/proof.ts";
import type { ProofPlan } from "../../../../../app/proof/plan/ProofPlan.ts";
import { useCore } from "../../../../state/CoreContext.ts";
import { TextField } from "../../../../ui/field/TextField.tsx";
import { SaveDialog } from "../../../../ui/SaveDialog.tsx";
import { commonTexts } from "../../../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../../../words/SpeechContext.tsx";
import { proofErrorWords } from "../../words/proofErrorWords.ts";
import { ownPlanTexts } from "./ownPlanTexts.ts";

/** Asks for the name a plan is kept under. @param over  the own plan that takes these figures; undefined: a new one */
export function NamePlan({
  plan,
  over,
  onKept,
  onClose,
}: {
  readonly plan: ProofPlan;
  readonly over: StoredPlan | undefined;
  readonly onKept: (kept: StoredPlan) => void;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(ownPlanTexts);
  const common = useWords(commonTexts);
  const [name, setName] = useState(over?.name ?? "");
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<string>();
  const save = async () => {
    setTried(true);
    if (name.trim() === "") return;
    const answer = await core.client.call("plans.save", {
      ...plan,
      loadsN: [...plan.loadsN],
      runs: [...plan.runs],
      name: name.trim(),
      state: "inUse",
      ...(over === undefined ? {} : { planId: over.planId }),
      ...(over?.note === undefined ? {} : { note: over.note }),
    });
    if (answer.ok) onKept(answer.value);
    else setRefused(proofErrorWords(answer.error, speech));
  };
  return (
    <SaveDialog
      title={over === undefined ? words.keepTitle : words.change(over.name)}
      refused={refused}
      onSave={save}
      onClose={onClose}
    >
      <p className="why">{over === undefined ? words.keepWhy : words.changeWhy}</p>
      <TextField
        label={words.name}
        value={name}
        onText={setName}
        maxLength={120}
        error={tried && name.trim() === "" ? common.nameNeeded : undefined}
      />
    </SaveDialog>
  );
}
