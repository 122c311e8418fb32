import { ruleTexts } from "../../../../app/words/recordTexts.ts";
import { SelectField } from "../../../ui/field/SelectField.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import type { AboutDraft } from "./aboutDraft.ts";
import { aboutTexts } from "./aboutTexts.ts";
import { planTexts } from "./planTexts.ts";

const kinds = ["relative", "ofGreatest", "absolute"] as const;
const ruleNames = ["simple", "guarded", "iso14253", "ilacG8", "probability"] as const;

/** How far the gauge may be off, and by which rule that is stated. */
export function AllowedFields({
  draft,
  fault,
  onDraft,
}: {
  readonly draft: AboutDraft;
  readonly fault: boolean;
  readonly onDraft: (part: Partial<AboutDraft>) => void;
}) {
  const words = useWords(planTexts);
  const about = useWords(aboutTexts);
  const rules = useWords(ruleTexts);
  const isForce = draft.allowedKind === "absolute";
  return (
    <div className="fields">
      <TextField
        label={words.allowed}
        hint={words.allowedHint}
        unit={isForce ? unitText(draft.allowedUnit) : "%"}
        inputMode="decimal"
        value={draft.allowed}
        onText={(allowed) => onDraft({ allowed })}
        error={fault ? about[isForce ? "range.allowedForce" : "range.allowed"] : undefined}
      />
      <SelectField
        label={words.allowedAs}
        value={draft.allowedKind}
        options={kinds.map((value) => ({ value, label: words[`allowed.${value}`] }))}
        onChoose={(allowedKind) => onDraft({ allowedKind })}
      />
      {draft.allowed !== "" && (
        <SelectField
          label={about.rule}
          value={draft.rule}
          options={ruleNames.map((value) => ({ value, label: rules[value] }))}
          onChoose={(rule) => onDraft({ rule })}
        />
      )}
    </div>
  );
}
