import { useState } from "react";
import { Button } from "../../../ui/Button.tsx";
import { Dialog } from "../../../ui/Dialog.tsx";
import { NoteField } from "../../../ui/field/NoteField.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { roundLeadTexts } from "./texts.ts";

const LEAST_LENGTH = 3; // as the records want it

/** Why a stop is put off or left out: the usual reasons are one press each, any other is written. */
export function PassDialog({
  name,
  as,
  onReason,
  onClose,
}: {
  readonly name: string;
  readonly as: "later" | "leftOut";
  readonly onReason: (why: string) => void;
  readonly onClose: () => void;
}) {
  const words = useWords(roundLeadTexts);
  const common = useWords(commonTexts);
  const [why, setWhy] = useState("");
  const [missing, setMissing] = useState(false);
  const submit = () => {
    if (why.trim().length < LEAST_LENGTH) setMissing(true);
    else onReason(why.trim());
  };
  return (
    <Dialog
      title={(as === "later" ? words.laterTitle : words.leaveOutTitle)(name)}
      onClose={onClose}
      onSubmit={submit}
      acts={
        <>
          <Button kind="main" type="submit">
            {as === "later" ? words.later : words.leaveOut}
          </Button>
          <Button onClick={onClose}>{common.cancel}</Button>
        </>
      }
    >
      <p className="why">{words.whyKept}</p>
      <div className="row">
        {(["running", "notLet", "repair", "adapterMissing"] as const).map((usual) => (
          <Button key={usual} onClick={() => onReason(words[usual])}>
            {words[usual]}
          </Button>
        ))}
      </div>
      <NoteField
        label={common.reason}
        value={why}
        onText={setWhy}
        error={missing && why.trim().length < LEAST_LENGTH ? common.reasonNeeded : undefined}
      />
    </Dialog>
  );
}
