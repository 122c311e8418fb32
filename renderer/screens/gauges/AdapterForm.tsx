import { useState } from "react";
import type { AdapterRow } from "../../../app/contract/recordViews.ts";
import { tapers } from "../../../app/verdict/tapers.ts";
import { useCore } from "../../state/CoreContext.ts";
import { DateField } from "../../ui/field/DateField.tsx";
import { NoteField } from "../../ui/field/NoteField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { SaveDialog } from "../../ui/SaveDialog.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { figureText, parseNumber } from "../../words/parseNumber.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { gaugesTexts } from "./texts.ts";

/** An adapter in the register. A changed scale is a new calibration, with a number of its own. */
export function AdapterForm({ row, onClose }: { readonly row: AdapterRow | undefined; readonly onClose: () => void }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(gaugesTexts);
  const common = useWords(commonTexts);
  const adapter = row?.adapter;
  const [name, setName] = useState(adapter?.name ?? "");
  const [taper, setTaper] = useState(adapter?.taper ?? "");
  const [serial, setSerial] = useState(adapter?.serial ?? "");
  const [assumed, setAssumed] = useState(adapter?.assumed ?? true);
  const [scale, setScale] = useState(figureText(adapter?.scale ?? 1, 8));
  const [within, setWithin] = useState(figureText((adapter?.scaleUncertainty ?? 0.005) * 100, 8));
  const [calibratedOn, setCalibratedOn] = useState(adapter?.calibratedOn ?? "");
  const [dueOn, setDueOn] = useState(adapter?.dueOn ?? "");
  const [note, setNote] = useState(adapter?.note ?? "");
  const [retired, setRetired] = useState(adapter?.state === "retired");
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<string>();

  const factor = assumed ? 1 : parseNumber(scale);
  const percent = parseNumber(within);
  const factorGood = typeof factor === "number" && factor > 0 && factor <= 10;
  const withinGood = typeof percent === "number" && percent > 0 && percent <= 100;
  const save = async () => {
    setTried(true);
    if (name.trim() === "" || !factorGood || !withinGood) return;
    const scaleUncertainty = percent / 100;
    const same =
      adapter !== undefined &&
      adapter.scale === factor &&
      Math.abs(adapter.scaleUncertainty - scaleUncertainty) < 1e-12;
    const answer = await core.client.call("adapters.save", {
      ...(adapter === undefined ? {} : { adapterId: adapter.adapterId }),
      name: name.trim(),
      taper: taper.trim(),
      scale: factor,
      scaleUncertainty,
      assumed,
      version: adapter === undefined ? 1 : same ? adapter.version : adapter.version + 1,
      state: retired ? "retired" : "inUse",
      ...(serial.trim() === "" ? {} : { serial: serial.trim() }),
      ...(calibratedOn === "" || assumed ? {} : { calibratedOn }),
      ...(dueOn === "" ? {} : { dueOn }),
      ...(note === "" ? {} : { note }),
    });
    if (answer.ok) onClose();
    else setRefused(errorWords(answer.error, speech));
  };
  return (
    <SaveDialog
      wide
      title={adapter === undefined ? words.addAdapter : words.editAdapter(adapter.name)}
      refused={refused}
      onSave={save}
      onClose={onClose}
    >
      <div className="fields">
        <TextField
          label={words.name}
          value={name}
          onText={setName}
          maxLength={120}
          error={tried && name.trim() === "" ? common.nameNeeded : undefined}
        />
        <TextField label={words.taper} value={taper} onText={setTaper} list="tapers" maxLength={40} />
        <datalist id="tapers">
          {tapers.map(({ designation }) => (
            <option key={designation} value={designation} />
          ))}
        </datalist>
        <TextField label={words.serial} hint={common.optional} value={serial} onText={setSerial} maxLength={80} />
      </div>
      <Tick checked={assumed} onTick={setAssumed}>
        {words.assumed}
      </Tick>
      <div className="fields">
        {!assumed && (
          <TextField
            label={words.scale}
            hint={words.scaleHint}
            inputMode="decimal"
            value={scale}
            onText={setScale}
            error={tried && !factorGood ? words.scaleRange : undefined}
          />
        )}
        <TextField
          label={words.scaleU}
          inputMode="decimal"
          value={within}
          onText={setWithin}
          error={tried && !withinGood ? words.scaleURange : undefined}
        />
        {!assumed && (
          <DateField label={words.calibratedOn} hint={common.optional} value={calibratedOn} onText={setCalibratedOn} />
        )}
        <DateField label={words.dueOn} hint={common.optional} value={dueOn} onText={setDueOn} />
      </div>
      {adapter !== undefined && <small>{words.newVersion}</small>}
      <NoteField label={common.note} value={note} onText={setNote} rows={2} />
      {adapter !== undefined && (
        <Tick checked={retired} onTick={setRetired}>
          {words.retire}
        </Tick>
      )}
    </SaveDialog>
  );
}
