import { useState } from "react";
import type { Draft } from "../../../app/contract/seriesViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { parseForce } from "../../../app/quantity/parseForce.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { changeSeries } from "./acts.ts";
import { measureTexts } from "./texts.ts";

/** A value read off a display. What it means is shown while it is typed, so that daN taken for kN is noticed here. */
export function TypeValue({
  draft,
  unit,
  onClose,
}: {
  readonly draft: Draft;
  readonly unit: ForceUnit;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const common = useWords(commonTexts);
  const [text, setText] = useState(draft.typed?.text ?? "");
  const [refused, setRefused] = useState<string>();
  const force = parseForce(text);

  const send = async (value: string | null) => {
    const result = await changeSeries(core, "series.type", { text: value });
    if (result.ok) onClose();
    else setRefused(errorWords(result.error, speech));
  };
  return (
    <Dialog
      title={words.typeTitle}
      onClose={onClose}
      onSubmit={() => send(text)}
      acts={
        <>
          <Button kind="main" type="submit">
            {words.typeUse}
          </Button>
          {draft.typed !== undefined && <Button onClick={() => send(null)}>{words.typeForget}</Button>}
          <Button onClick={onClose}>{common.cancel}</Button>
        </>
      }
    >
      <TextField
        label={words.typeLabel}
        hint={force.kind === "force" ? words.typeMeans(speech.force(force.forceN, unit)) : words.typeHint}
        value={text}
        maxLength={40}
        autoFocus
        onText={(next) => {
          setText(next);
          setRefused(undefined);
        }}
        error={refused}
      />
    </Dialog>
  );
}
