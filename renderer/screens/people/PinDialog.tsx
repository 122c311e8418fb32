import { useState } from "react";
import type { OperatorView } from "../../../app/contract/recordViews.ts";
import type { Right } from "../../../app/people/rights.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { PinEntry } from "./PinEntry.tsx";
import { peopleTexts } from "./peopleTexts.ts";

/** A person says yes to the next act of a kind with the PIN. */
export function PinDialog({
  person,
  right,
  onDone,
  onClose,
}: {
  readonly person: OperatorView;
  readonly right: Right;
  readonly onDone: () => void;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(peopleTexts);
  const common = useWords(commonTexts);
  const [pin, setPin] = useState("");
  const [wrong, setWrong] = useState<string>();
  const [busy, setBusy] = useState(false);
  const enter = async () => {
    if (pin === "" || busy) return;
    setBusy(true);
    const answer = await core.client.call("people.confirm", { operatorId: person.operatorId, right, pin });
    setBusy(false);
    if (answer.ok) return onDone();
    setPin("");
    setWrong(errorWords(answer.error, speech));
  };
  return (
    <Dialog
      title={words.pinTitle(person.name)}
      onClose={onClose}
      onSubmit={enter}
      acts={<Button onClick={onClose}>{common.cancel}</Button>}
    >
      <p className="why">{words[`act.${right}`]}</p>
      <PinEntry label={words.pin} value={pin} onText={setPin} error={wrong} go={words.pinEnter} />
    </Dialog>
  );
}
