import { useState } from "react";
import type { LearnView } from "../../../app/contract/linkViews.ts";
import { forceUnits } from "../../../app/quantity/forceUnits.ts";
import { Button } from "../../ui/Button.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { unitText } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { setupTexts } from "./texts.ts";

/** What the sample could not tell. A unit and a rate are answered here; the rest is for the eye to compare. */
export function LearnQuestions({
  open,
  answers,
  onAnswer,
}: {
  readonly open: LearnView["undecided"];
  readonly answers: Readonly<Record<string, string>>;
  readonly onAnswer: (field: string, text: string) => void;
}) {
  const { language } = useSpeech();
  const words = useWords(setupTexts);
  const common = useWords(commonTexts);
  const [rate, setRate] = useState("");
  if (open.length === 0) return null;
  const ask = (field: string, question: string) => {
    if (language === "en") return question;
    return field === "unit" ? words["ask.unit"] : field === "rate" ? words["ask.rate"] : words["ask.other"];
  };
  return (
    <div className="stack">
      <h3>{words.question}</h3>
      {open.map(({ field, question }) => {
        if (field === "unit") {
          return (
            <SelectField
              key={field}
              label={ask(field, question)}
              value={answers.unit ?? ""}
              options={[
                { value: "", label: words.choose },
                ...forceUnits.map((unit) => ({ value: unit as string, label: unitText(unit) })),
              ]}
              onChoose={(unit) => onAnswer("unit", unit)}
            />
          );
        }
        if (field === "rate") {
          return (
            <div key={field} className="row">
              <TextField label={ask(field, question)} inputMode="decimal" value={rate} onText={setRate} />
              <Button disabled={rate.trim() === ""} onClick={() => onAnswer("rate", rate)}>
                {common.save}
              </Button>
            </div>
          );
        }
        return <p key={field + question}>{ask(field, question)}</p>;
      })}
    </div>
  );
}
