import { useState } from "react";
import type { Draft } from "../../../../app/contract/seriesViews.ts";
import { checkReasons } from "../../../../app/words/checkReasons.ts";
import { checkReasonTexts } from "../../../../app/words/recordTexts.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { Dialog } from "../../../ui/Dialog.tsx";
import { Choices } from "../../../ui/field/Choices.tsx";
import { NoteField } from "../../../ui/field/NoteField.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { parseNumber } from "../../../words/parseNumber.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { changeSeries } from "../acts.ts";
import { measureTexts } from "../texts.ts";

/** Why this check is made and what was so that day: it stays with the record. */
export function AboutCheck({ draft, onClose }: { readonly draft: Draft; readonly onClose: () => void }) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const common = useWords(commonTexts);
  const reasons = useWords(checkReasonTexts);
  const [reason, setReason] = useState(draft.reason);
  const [warm, setWarm] = useState(draft.spindleWarm === undefined ? "unknown" : draft.spindleWarm ? "warm" : "cold");
  const [counter, setCounter] = useState(draft.counter === undefined ? "" : String(draft.counter));
  const [temperature, setTemperature] = useState(
    draft.temperatureC === undefined ? "" : speech.number(draft.temperatureC, 1),
  );
  const [workOrder, setWorkOrder] = useState(draft.workOrder ?? "");
  const [note, setNote] = useState(draft.note);

  const count = parseNumber(counter);
  const counterWrong = count !== undefined && (count === "unreadable" || !Number.isSafeInteger(count) || count < 0);
  const degrees = parseNumber(temperature);
  const temperatureWrong = degrees !== undefined && (degrees === "unreadable" || degrees < -40 || degrees > 120);

  const save = async () => {
    if (counterWrong || temperatureWrong) return;
    const said = await report(
      changeSeries(core, "series.describe", {
        reason,
        spindleWarm: warm === "unknown" ? null : warm === "warm",
        counter: typeof count === "number" ? count : null,
        temperatureC: typeof degrees === "number" ? degrees : null,
        workOrder: workOrder.trim() === "" ? null : workOrder.trim(),
        note,
      }),
    );
    if (said !== undefined) onClose();
  };
  return (
    <Dialog
      title={words.aboutTitle}
      onClose={onClose}
      onSubmit={save}
      acts={
        <>
          <Button kind="main" type="submit">
            {common.save}
          </Button>
          <Button onClick={onClose}>{common.cancel}</Button>
        </>
      }
    >
      <Choices
        label={words.why}
        value={reason}
        options={checkReasons.map((value) => ({ value, label: reasons[value] }))}
        onChoose={setReason}
      />
      <Choices
        label={words.warmLabel}
        value={warm}
        options={[
          { value: "warm", label: words.warmShort },
          { value: "cold", label: words.coldShort },
          { value: "unknown", label: words.unknownShort },
        ]}
        onChoose={setWarm}
      />
      <div className="fields">
        <TextField
          label={words.counter}
          hint={words.counterHint}
          inputMode="numeric"
          value={counter}
          onText={setCounter}
          error={counterWrong ? words.wholeNumber : undefined}
        />
        <TextField
          label={words.temperature}
          hint={common.optional}
          inputMode="decimal"
          unit="°C"
          value={temperature}
          onText={setTemperature}
          error={temperatureWrong ? words.temperatureRange : undefined}
        />
        <TextField
          label={words.workOrder}
          hint={common.optional}
          value={workOrder}
          onText={setWorkOrder}
          maxLength={80}
        />
      </div>
      <NoteField label={common.note} value={note} onText={setNote} />
    </Dialog>
  );
}
