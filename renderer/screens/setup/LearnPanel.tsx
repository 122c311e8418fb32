import { useState } from "react";
import type { LearnView } from "../../../app/contract/linkViews.ts";
import type { Input } from "../../../app/contract/methods.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { NoteField } from "../../ui/field/NoteField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { LearnQuestions } from "./LearnQuestions.tsx";
import { LineTable } from "./LineTable.tsx";
import { setupTexts } from "./texts.ts";

type Answers = Readonly<Record<string, string>>;

/** Learning a gauge's lines: the raw ones beside the read ones, and one plain question for each thing that cannot be known. */
export function LearnPanel({ unit, gaugeId }: { readonly unit: ForceUnit; readonly gaugeId: string | undefined }) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(setupTexts);
  const common = useWords(commonTexts);
  const [learned, setLearned] = useState<LearnView>();
  const [sample, setSample] = useState("");
  const [used, setUsed] = useState<string>();
  const [answers, setAnswers] = useState<Answers>({});
  const [name, setName] = useState("");
  const [done, setDone] = useState(false);

  const learn = async (from: string | undefined, given: Answers) => {
    setDone(false);
    setUsed(from);
    setAnswers(given);
    const input: Input<"link.learn"> = { answers: given, ...(from === undefined ? {} : { sample: from }) };
    setLearned(await report(core.client.call("link.learn", input)));
  };
  const pattern = learned?.pattern;
  const open = learned?.undecided.some(({ field }) => field === "unit") === true;
  const use = async () => {
    if (pattern === undefined || pattern === null || name.trim() === "" || open) return;
    // A learned pattern is plain JSON: it has just crossed as such.
    const input = {
      name: name.trim(),
      pattern,
      ...(gaugeId === undefined ? {} : { gaugeId }),
    } as Input<"link.usePattern">;
    if ((await report(core.client.call("link.usePattern", input))) !== undefined) setDone(true);
  };
  return (
    <details>
      <summary>{words.learnTitle}</summary>
      <div className="stack">
        <p className="why soft">{words.learnWhy}</p>
        <div className="row">
          <Button onClick={() => learn(undefined, {})}>{words.learnNow}</Button>
        </div>
        <NoteField label={words.sample} hint={words.sampleHint} value={sample} onText={setSample} rows={4} />
        <div className="row">
          <Button disabled={sample.trim() === ""} onClick={() => learn(sample, {})}>
            {words.learnSample}
          </Button>
        </div>
        {learned?.refused && <Problem>{words.refused(learned.refused)}</Problem>}
        {pattern && learned && (
          <>
            <p role="status">{words.confidence(speech.percent(learned.confidence))}</p>
            <LearnQuestions
              open={learned.undecided}
              answers={answers}
              onAnswer={(field, text) => learn(used, { ...answers, [field]: text })}
            />
            <LineTable lines={learned.lines} unit={answers.unit === undefined ? unit : forceUnitOf(answers.unit)} />
            <div className="fields">
              <TextField
                label={words.patternName}
                value={name}
                onText={setName}
                maxLength={120}
                error={open ? words.answerFirst : undefined}
                hint={name.trim() === "" ? common.nameNeeded : undefined}
              />
            </div>
            <div className="row">
              <Button kind="main" disabled={open || name.trim() === ""} onClick={use}>
                {words.usePattern}
              </Button>
              {done && <span role="status">{words.patternUsed}</span>}
            </div>
          </>
        )}
      </div>
    </details>
  );
}
