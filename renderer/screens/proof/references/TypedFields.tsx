import { DateField } from "../../../ui/field/DateField.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import type { ReferenceFields } from "./ReferenceFields.ts";
import { referenceTexts } from "./referenceTexts.ts";

/** Forces that somebody else states: how well they are known, up to where, until when. */
export function TypedFields({ draft, unit, errorAt, onDraft }: ReferenceFields) {
  const words = useWords(referenceTexts);
  const cell = (name: "relative" | "fixed" | "capacity" | "dueOn") => ({
    value: draft[name],
    onText: (text: string) => onDraft({ [name]: text }),
    error: errorAt(name),
  });
  return (
    <div className="fields">
      <TextField label={words.typedRelative} inputMode="decimal" {...cell("relative")} />
      <TextField
        label={words.typedFixed}
        hint={words.mayStayEmpty}
        inputMode="decimal"
        unit={unitText(unit)}
        {...cell("fixed")}
      />
      <TextField
        label={words.capacity}
        hint={words.mayStayEmpty}
        inputMode="decimal"
        unit={unitText(unit)}
        {...cell("capacity")}
      />
      <DateField label={words.dueOn} hint={words.mayStayEmpty} {...cell("dueOn")} />
    </div>
  );
}
