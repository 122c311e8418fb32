import { type FormEvent, Fragment, useState } from "react";
import { type AssumptionName, defaultAssumptions } from "../../../app/correction/assumptions.ts";
import type { Works } from "../../../app/ledger/register.ts";
import { ruleSentences, ruleTexts } from "../../../app/words/recordTexts.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { NoteField } from "../../ui/field/NoteField.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import type { Speech } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { shownUnits } from "../../words/units.ts";
import { useReport } from "../shell/useReport.ts";
import { setupTexts } from "./texts.ts";
import {
  assumptionNames,
  type WorksDraft,
  type WorksFigure,
  worksDraftOf,
  worksFaults,
  worksOf,
  worksRanges,
} from "./worksDraft.ts";

/** The works: its name, clock, unit, and how it judges. */
export function WorksSection() {
  const works = useProgram((state) => state.works);
  return works === undefined ? null : <WorksForm key={works.worksId} works={works} />;
}

const percentText = (share: number, speech: Speech) =>
  speech
    .number(share * 100, 2)
    .replace(/([.,]\d*?)0+$/, "$1")
    .replace(/[.,]$/, "");

const rules = ["simple", "guarded", "iso14253", "ilacG8", "probability"] as const;

function WorksForm({ works }: { readonly works: Works }) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(setupTexts);
  const common = useWords(commonTexts);
  const ruleWords = useWords(ruleTexts);
  const sentences = useWords(ruleSentences);
  const [draft, setDraft] = useState(() => worksDraftOf(works));
  const [tried, setTried] = useState(false);
  const [saved, setSaved] = useState(false);
  const faults = tried ? worksFaults(draft) : [];
  const set = (change: Partial<WorksDraft>) => {
    setDraft({ ...draft, ...change });
    setSaved(false);
  };
  const errorAt = (field: WorksFigure | "name" | "timeZone") => {
    const fault = faults.find((one) => one.field === field);
    if (fault === undefined) return undefined;
    if (fault.what === "needed") return common.nameNeeded;
    if (fault.what === "zone") return words.timeZoneWrong;
    if (fault.what === "order") return words.dropOrder;
    const [low, high] = worksRanges[field as WorksFigure]; // only figures have ranges
    return words.range(speech.number(low, low % 1 === 0 ? 0 : 1), speech.number(high, high % 1 === 0 ? 0 : 1));
  };
  const save = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (worksFaults(draft).length > 0) return;
    const answer = await report(core.client.call("works.save", worksOf(draft, works)));
    if (answer !== undefined) {
      core.program.setState({ works: answer });
      setSaved(true);
    }
  };
  const figure = (field: WorksFigure, label: string, hint?: string) => (
    <TextField
      label={label}
      hint={hint}
      inputMode="decimal"
      value={draft[field]}
      onText={(text) => set({ [field]: text })}
      error={errorAt(field)}
    />
  );
  const unconfirmed = (name: AssumptionName) =>
    draft[name].trim() === "" ? words.unconfirmed(percentText(defaultAssumptions[name], speech)) : words.confirmed;
  return (
    <section className="sheet" aria-labelledby="works-title">
      <h2 id="works-title">{words.works}</h2>
      <form className="stack" noValidate onSubmit={save}>
        <div className="fields">
          <TextField
            label={words.worksName}
            value={draft.name}
            onText={(name) => set({ name })}
            error={errorAt("name")}
            maxLength={120}
          />
          <TextField
            label={words.timeZone}
            value={draft.timeZone}
            list="time-zones"
            onText={(timeZone) => set({ timeZone })}
            error={errorAt("timeZone")}
          />
          <datalist id="time-zones">
            {Intl.supportedValuesOf("timeZone").map((zone) => (
              <option key={zone} value={zone} />
            ))}
          </datalist>
          <SelectField
            label={words.unitShown}
            value={draft.unitShown}
            options={shownUnits.map((unit) => ({ value: unit as string, label: unit }))}
            onChoose={(unitShown) => set({ unitShown })}
          />
          {figure("intervalDays", words.interval)}
        </div>
        <SelectField
          label={words.rule}
          hint={sentences[draft.rule]}
          value={draft.rule}
          options={rules.map((rule) => ({ value: rule, label: ruleWords[rule] }))}
          onChoose={(rule) => set({ rule })}
        />
        <div className="fields">
          {figure(
            "coverageFactor",
            words.coverage,
            words.emptyDefault(draft.rule === "iso14253" ? speech.number(1.645, 3) : "2"),
          )}
          {draft.rule === "guarded" && figure("guardFactor", words.guard, words.emptyDefault("1"))}
          {draft.rule === "probability" && figure("threshold", words.threshold, words.emptyDefault("95"))}
        </div>
        <div className="fields">
          {figure("caution", words.caution, words.dropHint)}
          {figure("act", words.act)}
        </div>
        <fieldset className="group">
          <legend>{words.assumptions}</legend>
          <p className="small soft">{words.assumptionsWhy}</p>
          <div className="fields">
            {assumptionNames.map((name) => (
              <Fragment key={name}>{figure(name, words[name], unconfirmed(name))}</Fragment>
            ))}
          </div>
        </fieldset>
        <NoteField
          label={words.accreditation}
          hint={words.accreditationHint}
          value={draft.accreditation}
          onText={(accreditation) => set({ accreditation })}
        />
        <div className="row">
          <Button kind="main" type="submit">
            {common.save}
          </Button>
          <span role="status">{saved ? words.worksSaved : ""}</span>
        </div>
      </form>
    </section>
  );
}
