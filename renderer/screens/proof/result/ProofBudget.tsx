import { useState } from "react";
import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { proofSourceTexts } from "../../../../app/words/proofSourceTexts.ts";
import { SelectField } from "../../../ui/field/SelectField.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { resultTexts } from "./resultTexts.ts";
import type { ShownResult } from "./ShownResult.ts";

/** The budget of one step; the greatest load first, since that is where most measuring is done. */
export function ProofBudget({ shown, unit }: { readonly shown: ShownResult; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(resultTexts);
  const sources = useWords(proofSourceTexts);
  const { steps } = shown.result;
  const [at, setAt] = useState(String(steps.length - 1));
  const step = steps[Number(at)] ?? steps.at(-1);
  if (step === undefined) return null;
  const { uncertainty, referenceN } = step;
  const row = (name: string, valueN: number, df: string) => (
    <tr key={name}>
      <th scope="row">{name}</th>
      <td className="num">{speech.number(fromNewtons(valueN, unit), 5)}</td>
      <td className="num">{referenceN > 0 ? speech.number((100 * valueN) / referenceN, 4) : "–"}</td>
      <td className="num">{df}</td>
    </tr>
  );
  const degrees = (df: number | null) => (df === null ? words.many : speech.number(df, df < 30 ? 1 : 0));
  return (
    <details className="sheet tall">
      <summary>{words.budget}</summary>
      <SelectField
        label={words.budgetAt}
        value={at}
        options={steps.map((one, i) => ({ value: String(i), label: speech.force(one.referenceN, unit, 1) }))}
        onChoose={setAt}
      />
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.colSource}</th>
              <th scope="col" className="num">
                {words.colStandard(unitText(unit))}
              </th>
              <th scope="col" className="num">
                {words.colPercent}
              </th>
              <th scope="col" className="num">
                {words.colDf}
              </th>
            </tr>
          </thead>
          <tbody>
            {uncertainty.contributions.map((line) =>
              row(sources[line.source], line.standardN, degrees(line.degreesOfFreedom)),
            )}
            {row(words.together, uncertainty.standardN, degrees(uncertainty.degreesOfFreedom))}
            {row(words.expanded(speech.number(uncertainty.coverageFactor, 2)), uncertainty.expandedN, "")}
          </tbody>
        </table>
      </div>
    </details>
  );
}
