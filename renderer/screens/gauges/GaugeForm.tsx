import { useState } from "react";
import type { GaugeRow } from "../../../app/contract/recordViews.ts";
import { fromNewtons, toNewtons } from "../../../app/quantity/forceUnits.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { DateField } from "../../ui/field/DateField.tsx";
import { NoteField } from "../../ui/field/NoteField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { SaveDialog } from "../../ui/SaveDialog.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { figureText, parseNumber } from "../../words/parseNumber.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { gaugesTexts } from "./texts.ts";

/** A gauge in the register. Its curve, pattern and plug are kept as they are. */
export function GaugeForm({ row, onClose }: { readonly row: GaugeRow | undefined; readonly onClose: () => void }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(gaugesTexts);
  const common = useWords(commonTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const gauge = row?.gauge;
  const shown = (forceN: number | undefined) => figureText(forceN && fromNewtons(forceN, unit));
  const [name, setName] = useState(gauge?.name ?? "");
  const [serial, setSerial] = useState(gauge?.serial ?? "");
  const [capacity, setCapacity] = useState(shown(gauge?.capacityN));
  const [resolution, setResolution] = useState(shown(gauge?.resolutionN));
  const [provedOn, setProvedOn] = useState(gauge?.provedOn ?? "");
  const [dueOn, setDueOn] = useState(gauge?.dueOn ?? "");
  const [note, setNote] = useState(gauge?.note ?? "");
  const [retired, setRetired] = useState(gauge?.state === "retired");
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<string>();

  const most = parseNumber(capacity);
  const step = parseNumber(resolution);
  const capacityGood = typeof most === "number" && most > 0;
  const stepGood = step === undefined || (typeof step === "number" && step > 0);
  const save = async () => {
    setTried(true);
    if (name.trim() === "" || !capacityGood || !stepGood) return;
    const { provedOn: _p, dueOn: _d, serial: _s, note: _n, resolutionN: _r, ...kept } = gauge ?? {};
    const answer = await core.client.call("gauges.save", {
      ...kept,
      name: name.trim(),
      capacityN: toNewtons(most, unit),
      state: retired ? "retired" : "inUse",
      ...(serial.trim() === "" ? {} : { serial: serial.trim() }),
      ...(typeof step === "number" ? { resolutionN: toNewtons(step, unit) } : {}),
      ...(provedOn === "" ? {} : { provedOn }),
      ...(dueOn === "" ? {} : { dueOn }),
      ...(note === "" ? {} : { note }),
    });
    if (answer.ok) onClose();
    else setRefused(errorWords(answer.error, speech));
  };
  return (
    <SaveDialog
      wide
      title={gauge === undefined ? words.addGauge : words.editGauge(gauge.name)}
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
        <TextField label={words.serial} hint={common.optional} value={serial} onText={setSerial} maxLength={80} />
        <TextField
          label={words.capacity}
          hint={words.capacityHint}
          unit={unit}
          inputMode="decimal"
          value={capacity}
          onText={setCapacity}
          error={tried && !capacityGood ? common.aboveZero : undefined}
        />
        <TextField
          label={words.resolution}
          hint={words.resolutionHint}
          unit={unit}
          inputMode="decimal"
          value={resolution}
          onText={setResolution}
          error={tried && !stepGood ? common.aboveZero : undefined}
        />
        <DateField label={words.provedOn} hint={common.optional} value={provedOn} onText={setProvedOn} />
        <DateField label={words.dueOn} hint={common.optional} value={dueOn} onText={setDueOn} />
      </div>
      <NoteField label={common.note} value={note} onText={setNote} rows={2} />
      {gauge !== undefined && (
        <Tick checked={retired} onTick={setRetired}>
          {words.retire}
        </Tick>
      )}
    </SaveDialog>
  );
}
