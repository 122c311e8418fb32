import type { ProofMethod } from "../../../../app/proof/plan/ProofPlan.ts";
import { useList } from "../../../state/useList.ts";
import { NoteField } from "../../../ui/field/NoteField.tsx";
import { SelectField } from "../../../ui/field/SelectField.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { type AboutDraft, type AboutField, aboutOf } from "./aboutDraft.ts";
import { aboutTexts } from "./aboutTexts.ts";

type Props = {
  readonly draft: AboutDraft;
  readonly tried: boolean;
  readonly onDraft: (part: Partial<AboutDraft>) => void;
};

/** Who, for whom, by which edition, in which air. All of it may be filled in later. */
export function AboutFields({ draft, tried, onDraft, method }: Props & { readonly method: ProofMethod }) {
  const words = useWords(aboutTexts);
  const operators = (useList("operators").rows ?? []).filter(({ state }) => state === "inUse");
  const faults = aboutOf(draft).faults;
  const plain = (name: "customer" | "workOrder" | "edition") => ({
    label: words[name],
    value: draft[name],
    maxLength: 200,
    onText: (text: string) => onDraft({ [name]: text }),
  });
  const figure = (name: Exclude<AboutField, "allowed">) => ({
    label: words[name],
    value: draft[name],
    inputMode: "decimal" as const,
    onText: (text: string) => onDraft({ [name]: text }),
    error: tried && faults.has(name) ? words[`range.${name}`] : undefined,
  });
  return (
    <>
      <div className="fields">
        <SelectField
          label={words.operator}
          value={draft.operatorId ?? ""}
          options={[
            { value: "", label: words.nobody },
            ...operators.map(({ operatorId, name }) => ({ value: operatorId, label: name })),
          ]}
          onChoose={(id) => onDraft({ operatorId: id === "" ? undefined : id })}
        />
        <TextField {...plain("customer")} />
        <TextField {...plain("workOrder")} />
        {(method === "iso376" || method === "astm-e74") && <TextField {...plain("edition")} />}
      </div>
      <fieldset className="group">
        <legend>{words.air}</legend>
        <small>{words.airHint}</small>
        <div className="fields narrow">
          <TextField {...figure("temperature")} />
          <TextField {...figure("temperatureRange")} />
          <TextField {...figure("pressure")} />
          <TextField {...figure("humidity")} />
        </div>
      </fieldset>
      {method !== "working" && (
        <div className="fields">
          <TextField {...figure("degree")} hint={words.degreeHint} />
        </div>
      )}
      <NoteField
        label={words.accreditation}
        hint={words.accreditationHint}
        value={draft.accreditation}
        onText={(accreditation) => onDraft({ accreditation })}
        rows={2}
      />
      <NoteField label={words.note} value={draft.note} onText={(note) => onDraft({ note })} rows={2} />
    </>
  );
}
