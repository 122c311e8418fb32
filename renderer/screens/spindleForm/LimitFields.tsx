import { type ForceUnit, fromNewtons, toNewtons } from "../../../app/quantity/forceUnits.ts";
import { Button } from "../../ui/Button.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { parseNumber } from "../../words/parseNumber.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { shownUnits } from "../../words/units.ts";
import { type LimitName, limitNames, type SpindleDraft } from "./spindleDraft.ts";
import { spindleFormTexts } from "./texts.ts";

/** The builder's figures, in the unit the user reads them in. A change of unit carries what is typed over. */
export function LimitFields({
  draft,
  worksUnit,
  onChange,
  errorAt,
}: {
  readonly draft: SpindleDraft;
  readonly worksUnit: ForceUnit;
  readonly onChange: (change: Partial<SpindleDraft>) => void;
  readonly errorAt: (field: LimitName) => string | undefined;
}) {
  const speech = useSpeech();
  const words = useWords(spindleFormTexts);
  const unit = draft.unit === "" ? worksUnit : draft.unit;
  const written = (value: number) =>
    speech
      .number(value, 4)
      .replace(/([.,]\d*?)0+$/, "$1")
      .replace(/[.,]$/, "");
  const chooseUnit = (chosen: ForceUnit | "") => {
    const next = chosen === "" ? worksUnit : chosen;
    const carried = limitNames.map((name) => {
      const value = parseNumber(draft.limits[name]);
      return [
        name,
        typeof value === "number" ? written(fromNewtons(toNewtons(value, unit), next)) : draft.limits[name],
      ];
    });
    onChange({ unit: chosen, limits: Object.fromEntries(carried) as SpindleDraft["limits"] }); // one of each name
  };
  const nominal = parseNumber(draft.limits.nominal);
  const propose = () => {
    if (typeof nominal !== "number") return;
    onChange({ limits: { ...draft.limits, minimum: written(nominal * 0.8), warning: written(nominal * 0.85) } });
  };
  const openToPropose =
    typeof nominal === "number" && nominal > 0 && draft.limits.minimum === "" && draft.limits.warning === "";
  return (
    <fieldset className="group">
      <legend>{words.limits}</legend>
      <p className="small soft">{words.limitsWhy}</p>
      <div className="fields">
        <SelectField
          label={words.unit}
          value={draft.unit}
          options={[
            { value: "", label: words.asWorks(worksUnit) },
            ...shownUnits.map((one) => ({ value: one, label: one })),
          ]}
          onChoose={chooseUnit}
        />
        {limitNames.map((name) => (
          <TextField
            key={name}
            label={words[name]}
            unit={unit}
            inputMode="decimal"
            value={draft.limits[name]}
            onText={(text) => onChange({ limits: { ...draft.limits, [name]: text } })}
            error={errorAt(name)}
          />
        ))}
      </div>
      {openToPropose && (
        <div className="row">
          <Button onClick={propose}>{words.eighty}</Button>
          <small>{words.eightyHint}</small>
        </div>
      )}
      <TextField
        label={words.limitsFrom}
        hint={words.limitsFromHint}
        value={draft.limitsFrom}
        maxLength={500}
        onText={(limitsFrom) => onChange({ limitsFrom })}
      />
    </fieldset>
  );
}
