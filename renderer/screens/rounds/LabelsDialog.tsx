import { useState } from "react";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { Choices } from "../../ui/field/Choices.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { saveFile } from "./saveFile.ts";
import { roundsTexts } from "./texts.ts";

const kinds = ["spindles", "adapters", "gauges"] as const;
const sizes = ["small", "medium", "large"] as const;

/** Labels for everything of a kind that is in use. */
export function LabelsDialog({ onClose }: { readonly onClose: () => void }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(roundsTexts);
  const common = useWords(commonTexts);
  const { language } = useSpeech();
  const [what, setWhat] = useState<(typeof kinds)[number]>("spindles");
  const [size, setSize] = useState<(typeof sizes)[number]>("medium");
  const [skip, setSkip] = useState("0");
  const wrong = !/^\d{1,2}$/.test(skip.trim());
  const make = async () => {
    if (wrong) return;
    const file = await report(core.client.call("labels.print", { what, size, skip: Number(skip), language }));
    if (file === undefined) return;
    saveFile(file);
    onClose();
  };
  return (
    <Dialog
      title={words.labelsTitle}
      onClose={onClose}
      onSubmit={make}
      acts={
        <>
          <Button kind="main" type="submit">
            {words.makeLabels}
          </Button>
          <Button onClick={onClose}>{common.cancel}</Button>
        </>
      }
    >
      <p>{words.labelsWhy}</p>
      <Choices
        label={words.labelsFor}
        value={what}
        options={kinds.map((value) => ({ value, label: words[value] }))}
        onChoose={setWhat}
      />
      <Choices
        label={words.size}
        value={size}
        options={sizes.map((value) => ({ value, label: words[value] }))}
        onChoose={setSize}
      />
      <TextField
        label={words.skip}
        value={skip}
        onText={setSkip}
        inputMode="numeric"
        error={wrong ? common.noNumber : undefined}
      />
    </Dialog>
  );
}
