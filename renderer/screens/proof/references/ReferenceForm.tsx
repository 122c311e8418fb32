import { useState } from "react";
import type { ReferenceRow } from "../../../../app/contract/proofViews.ts";
import { useCore, useProgram } from "../../../state/CoreContext.ts";
import { Choices } from "../../../ui/field/Choices.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { Tick } from "../../../ui/field/Tick.tsx";
import { SaveDialog } from "../../../ui/SaveDialog.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { errorWords } from "../../../words/errorWords.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { type ReferenceDraft, referenceDraftOf } from "./referenceDraft.ts";
import { referenceOf } from "./referenceOf.ts";
import { referenceTexts } from "./referenceTexts.ts";
import { TransducerFields } from "./TransducerFields.tsx";
import { TypedFields } from "./TypedFields.tsx";
import { WeightFields } from "./WeightFields.tsx";
import "./references.css";

/** What gauges are proved against: weights, a better transducer, or values typed from elsewhere. */
export function ReferenceForm({
  row,
  onClose,
  onSaved,
}: {
  readonly row: ReferenceRow | undefined;
  readonly onClose: () => void;
  readonly onSaved?: (row: ReferenceRow) => void;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(referenceTexts);
  const common = useWords(commonTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const [draft, setDraft] = useState(() => referenceDraftOf(row?.reference, unit));
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<string>();
  const change = (part: Partial<ReferenceDraft>) => setDraft({ ...draft, ...part });
  const { reference, faults } = referenceOf(draft, unit);
  const errorAt = (field: string) => {
    const fault = tried ? faults.get(field) : undefined;
    return fault === undefined ? undefined : words[fault];
  };
  const save = async () => {
    setTried(true);
    if (faults.size > 0 || reference.name === "") return;
    const referenceId = row?.reference.referenceId;
    const note = row?.reference.note;
    const answer = await core.client.call("references.save", {
      ...reference,
      ...(referenceId === undefined ? {} : { referenceId }),
      ...(note === undefined ? {} : { note }),
    });
    if (!answer.ok) return setRefused(errorWords(answer.error, speech));
    onSaved?.(answer.value);
    onClose();
  };
  const fields = { draft, unit, errorAt, onDraft: change };
  return (
    <SaveDialog
      wide
      title={row === undefined ? words.add : words.editOf(row.reference.name)}
      refused={refused}
      onSave={save}
      onClose={onClose}
    >
      <div className="fields">
        <TextField
          label={words.name}
          value={draft.name}
          onText={(name) => change({ name })}
          maxLength={120}
          error={tried && reference.name === "" ? common.nameNeeded : undefined}
        />
        <TextField
          label={words.serial}
          hint={words.mayStayEmpty}
          value={draft.serial}
          onText={(serial) => change({ serial })}
          maxLength={80}
        />
        <TextField
          label={words.certificate}
          hint={words.certificateHint}
          value={draft.certificate}
          onText={(certificate) => change({ certificate })}
          maxLength={500}
        />
      </div>
      <Choices
        label={words.kind}
        value={draft.kind}
        options={(["weights", "transducer", "typed"] as const).map((value) => ({ value, label: words[value] }))}
        onChoose={(kind) => change({ kind })}
      />
      {draft.kind === "weights" && <WeightFields {...fields} />}
      {draft.kind === "transducer" && <TransducerFields {...fields} />}
      {draft.kind === "typed" && <TypedFields {...fields} />}
      {row !== undefined && (
        <Tick checked={draft.retired} onTick={(retired) => change({ retired })}>
          {words.retire}
        </Tick>
      )}
    </SaveDialog>
  );
}
