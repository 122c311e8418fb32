import { useState } from "react";
import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import type { Spindle } from "../../../app/ledger/register.ts";
import { tapers } from "../../../app/verdict/tapers.ts";
import { ruleSentences, ruleTexts } from "../../../app/words/recordTexts.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { go } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { NoteField } from "../../ui/field/NoteField.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { SaveDialog } from "../../ui/SaveDialog.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { LimitFields } from "./LimitFields.tsx";
import { type DraftFault, draftOf, faultsOf, type SpindleDraft, spindleOf } from "./spindleDraft.ts";
import { spindleFormTexts } from "./texts.ts";

const rules = ["simple", "guarded", "iso14253", "ilacG8", "probability"] as const;
const noRows: readonly SpindleRow[] = Object.freeze([]);

/** A new spindle, or one to be changed. Name and taper are enough to begin. */
export function SpindleForm({
  spindle,
  onClose,
}: {
  readonly spindle?: Spindle | undefined;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(spindleFormTexts);
  const common = useWords(commonTexts);
  const ruleWords = useWords(ruleTexts);
  const sentences = useWords(ruleSentences);
  const works = useProgram((state) => state.works);
  const worksUnit = forceUnitOf(works?.unitShown ?? "kN");
  const rows = useList("spindles").rows ?? noRows;
  const [draft, setDraft] = useState<SpindleDraft>(() => draftOf(spindle, worksUnit));
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<string>();
  const faults = tried ? faultsOf(draft) : [];
  const set = (change: Partial<SpindleDraft>) => setDraft({ ...draft, ...change });
  const faultWords = {
    needed: common.nameNeeded,
    noNumber: common.noNumber,
    aboveZero: common.aboveZero,
    order: words.order,
    whole: common.noNumber,
  };
  const errorAt = (field: DraftFault["field"]) => {
    const fault = faults.find((one) => one.field === field);
    return fault && faultWords[fault.what];
  };
  const ruleInForce = draft.rule === "" ? works?.rule.rule : draft.rule;
  const save = async () => {
    setTried(true);
    if (faultsOf(draft).length > 0) return;
    const answer = await core.client.call("spindles.save", spindleOf(draft, spindle, worksUnit));
    if (!answer.ok) {
      setRefused(errorWords(answer.error, speech));
      return;
    }
    onClose();
    if (spindle === undefined) go({ place: "spindle", spindleId: answer.value.spindle.spindleId });
  };
  const known = (of: (row: SpindleRow) => string) => [...new Set(rows.map(of).filter((value) => value !== ""))].sort();

  return (
    <SaveDialog
      wide
      title={spindle === undefined ? words.newTitle : words.editTitle(spindle.name)}
      onClose={onClose}
      onSave={save}
      refused={refused}
    >
      <div className="fields">
        <TextField
          label={words.name}
          hint={words.nameHint}
          value={draft.name}
          onText={(name) => set({ name })}
          error={errorAt("name")}
          maxLength={120}
        />
        <TextField
          label={words.taper}
          hint={words.taperHint}
          value={draft.taper}
          onText={(taper) => set({ taper })}
          list="known-tapers"
          maxLength={40}
        />
        <TextField label={words.machine} value={draft.machine} onText={(machine) => set({ machine })} maxLength={120} />
        <TextField
          label={words.area}
          value={draft.area}
          onText={(area) => set({ area })}
          list="known-areas"
          maxLength={120}
        />
        <datalist id="known-tapers">
          {[...new Set([...known((row) => row.spindle.taper), ...tapers.map((one) => one.designation)])].map(
            (taper) => (
              <option key={taper} value={taper} />
            ),
          )}
        </datalist>
        <datalist id="known-areas">
          {known((row) => row.spindle.area).map((area) => (
            <option key={area} value={area} />
          ))}
        </datalist>
      </div>
      <LimitFields draft={draft} worksUnit={worksUnit} onChange={set} errorAt={errorAt} />
      <details>
        <summary>{words.judging}</summary>
        <div className="fields">
          <SelectField
            label={words.rule}
            hint={ruleInForce === undefined ? undefined : sentences[ruleInForce]}
            value={draft.rule}
            options={[
              { value: "", label: words.ruleAsWorks },
              ...rules.map((rule) => ({ value: rule, label: ruleWords[rule] })),
            ]}
            onChoose={(rule) => set({ rule })}
          />
          <TextField
            label={words.interval}
            hint={words.intervalHint(String(works?.intervalDays ?? 90))}
            inputMode="numeric"
            value={draft.intervalDays}
            onText={(intervalDays) => set({ intervalDays })}
            error={errorAt("intervalDays")}
          />
          <TextField
            label={words.intervalChanges}
            hint={common.optional}
            inputMode="numeric"
            value={draft.intervalToolChanges}
            onText={(intervalToolChanges) => set({ intervalToolChanges })}
            error={errorAt("intervalToolChanges")}
          />
        </div>
      </details>
      <details>
        <summary>{words.more}</summary>
        <div className="fields">
          <TextField
            label={words.unitSerial}
            value={draft.unitSerial}
            onText={(unitSerial) => set({ unitSerial })}
            maxLength={80}
          />
          <TextField
            label={words.wedge}
            inputMode="decimal"
            value={draft.wedgeRatio}
            onText={(wedgeRatio) => set({ wedgeRatio })}
            error={errorAt("wedgeRatio")}
          />
          <TextField
            label={words.springs}
            value={draft.springPack}
            onText={(springPack) => set({ springPack })}
            maxLength={500}
          />
        </div>
        <NoteField label={common.note} value={draft.note} onText={(note) => set({ note })} />
      </details>
      {spindle !== undefined && (
        <Tick checked={draft.retired} onTick={(retired) => set({ retired })}>
          {words.retire}
        </Tick>
      )}
    </SaveDialog>
  );
}
