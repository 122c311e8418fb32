import { Button } from "../../../ui/Button.tsx";
import { DateField } from "../../../ui/field/DateField.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import type { ReferenceFields } from "./ReferenceFields.ts";
import type { ReferenceDraft } from "./referenceDraft.ts";
import { referenceTexts } from "./referenceTexts.ts";

const powers = ["a", "b", "c", "d"] as const;
type Plain = "capacity" | "class" | "calibratedOn" | "dueOn" | "drift" | "from" | "to";

/** A better instrument with its own calibration: capacity, curve, uncertainty, class, due date. */
export function TransducerFields({ draft, unit, errorAt, onDraft }: ReferenceFields) {
  const words = useWords(referenceTexts);
  const cell = (name: Plain) => ({
    label: words[name],
    value: draft[name],
    onText: (text: string) => onDraft({ [name]: text }),
    error: errorAt(name),
  });
  const decimal = { inputMode: "decimal" as const };
  const point = (i: number, part: Partial<ReferenceDraft["points"][number]>) =>
    onDraft({ points: draft.points.with(i, { ...draft.points[i]!, ...part }) });
  return (
    <>
      <div className="fields">
        <TextField {...cell("capacity")} {...decimal} unit={unitText(unit)} />
        <TextField {...cell("class")} hint={words.mayStayEmpty} maxLength={20} />
        <DateField {...cell("calibratedOn")} />
        <DateField {...cell("dueOn")} />
        <TextField {...cell("drift")} {...decimal} hint={words.driftHint} />
      </div>
      <fieldset className="group">
        <legend>{words.curve}</legend>
        <small>{words.curveHint(unitText(unit))}</small>
        <div className="fields narrow">
          {powers.map((power, k) => (
            <TextField
              key={power}
              label={power}
              {...decimal}
              value={draft.coefficients[k]!}
              onText={(text) =>
                onDraft({ coefficients: draft.coefficients.with(k, text) as unknown as ReferenceDraft["coefficients"] })
              } // as long as before
              error={errorAt(`coefficient${k}`)}
            />
          ))}
          <TextField {...cell("from")} {...decimal} unit={unitText(unit)} hint={words.mayStayEmpty} />
          <TextField {...cell("to")} {...decimal} unit={unitText(unit)} hint={words.mayStayEmpty} />
        </div>
      </fieldset>
      <fieldset className="group">
        <legend>{words.within}</legend>
        <small>{words.withinHint}</small>
        <ol className="points">
          {draft.points.map(({ at, u }, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a load of the certificate is its place in the list
            <li key={i}>
              <TextField
                label={words.atLoad}
                {...decimal}
                unit={unitText(unit)}
                value={at}
                onText={(text) => point(i, { at: text })}
                error={errorAt(`at${i}`)}
              />
              <TextField
                label={words.withinU}
                {...decimal}
                value={u}
                onText={(text) => point(i, { u: text })}
                error={errorAt(`u${i}`)}
              />
            </li>
          ))}
        </ol>
        <div>
          <Button onClick={() => onDraft({ points: [...draft.points, { at: "", u: draft.points.at(-1)?.u ?? "" }] })}>
            {words.addPoint}
          </Button>
        </div>
      </fieldset>
    </>
  );
}
