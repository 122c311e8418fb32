import { useState } from "react";
import type { OperatorView } from "../../../app/contract/recordViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { PinEntry } from "./PinEntry.tsx";
import { peopleTexts } from "./peopleTexts.ts";

type Step = "old" | "new" | "again";
const PIN = /^\d{4,8}$/;

/** Sets, changes or takes away a PIN, one pad after the other: the old one, the new one, the new one again. */
export function SetPin({ person, onClose }: { readonly person: OperatorView; readonly onClose: () => void }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(peopleTexts);
  const common = useWords(commonTexts);
  const [step, setStep] = useState<Step>(person.hasPin ? "old" : "new");
  const [text, setText] = useState("");
  const [oldPin, setOldPin] = useState<string>();
  const [first, setFirst] = useState("");
  const [error, setError] = useState<string>();

  const to = (next: Step, fault?: string) => {
    setStep(next);
    setText("");
    setError(fault);
  };
  const send = async (pin: string | null, old: string | undefined) => {
    const { operatorId } = person;
    const answer = await core.client.call("people.setPin", {
      operatorId,
      pin,
      ...(old === undefined ? {} : { oldPin: old }),
    });
    if (!answer.ok) return to(person.hasPin ? "old" : "new", errorWords(answer.error, speech));
    core.toasts.getState().show({ text: pin === null ? words.pinGone : words.pinDone, untilMs: Date.now() + 5_000 });
    onClose();
  };
  const enter = () => {
    if (step === "old") {
      if (text === "") return;
      setOldPin(text);
      return to("new");
    }
    if (!PIN.test(text)) return setError(words.pinShort);
    if (step === "new") {
      setFirst(text);
      return to("again");
    }
    if (text !== first) return to("new", words.pinDiffers);
    send(text, oldPin);
  };
  const labels = { old: words.pinOld, new: words.pinNew, again: words.pinAgain };
  return (
    <Dialog
      title={words.pinTitle(person.name)}
      onClose={onClose}
      onSubmit={enter}
      acts={
        <>
          {step === "old" && <Button onClick={() => to("new")}>{words.pinForgotten}</Button>}
          {person.hasPin && step === "new" && <Button onClick={() => send(null, oldPin)}>{words.pinTake}</Button>}
          <Button onClick={onClose}>{common.cancel}</Button>
        </>
      }
    >
      <PinEntry
        key={step}
        label={labels[step]}
        value={text}
        onText={setText}
        error={error}
        go={step === "again" ? common.save : words.pinNext}
      />
    </Dialog>
  );
}
