import { type ReactNode, useState } from "react";
import { commonTexts } from "../words/commonTexts.ts";
import { useWords } from "../words/SpeechContext.tsx";
import { Button } from "./Button.tsx";
import { Dialog } from "./Dialog.tsx";
import { NoteField } from "./field/NoteField.tsx";

const LEAST_LENGTH = 3; // as the records want it

/** An act that stays on record and needs its reason. */
export function ReasonDialog({
  title,
  children,
  label,
  act,
  onReason,
  onClose,
}: {
  readonly title: string;
  readonly children?: ReactNode;
  /** What is asked for, where it is no reason. */
  readonly label?: string;
  readonly act: string;
  readonly onReason: (reason: string) => void;
  readonly onClose: () => void;
}) {
  const words = useWords(commonTexts);
  const [reason, setReason] = useState("");
  const [missing, setMissing] = useState(false);
  const submit = () => {
    if (reason.trim().length < LEAST_LENGTH) setMissing(true);
    else onReason(reason.trim());
  };
  return (
    <Dialog
      title={title}
      onClose={onClose}
      onSubmit={submit}
      acts={
        <>
          <Button kind="main" type="submit">
            {act}
          </Button>
          <Button onClick={onClose}>{words.cancel}</Button>
        </>
      }
    >
      {children !== undefined && <p className="why">{children}</p>}
      <NoteField
        label={label ?? words.reason}
        hint={words.reasonHint}
        value={reason}
        onText={setReason}
        error={missing && reason.trim().length < LEAST_LENGTH ? words.reasonNeeded : undefined}
      />
    </Dialog>
  );
}
