import type { ReactNode } from "react";
import type { ProofStepResult } from "../../../../app/proof/result/ProofResult.ts";
import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { uncertaintyDecimals } from "../../../../app/words/uncertaintyDecimals.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { resultTexts } from "./resultTexts.ts";
import type { ShownResult } from "./ShownResult.ts";

type Column = { readonly head: string; readonly cell: (step: ProofStepResult) => ReactNode; readonly text?: boolean };

/** Every step with its error and how well it is known; the columns of a method where it has them. */
export function StepsTable({ shown, unit }: { readonly shown: ShownResult; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(resultTexts);
  const { steps } = shown.result;
  const unitName = unitText(unit);
  const finest = Math.min(...steps.map(({ uncertainty }) => uncertainty.expandedN).filter((u) => u > 0));
  const decimals = Number.isFinite(finest) ? uncertaintyDecimals(fromNewtons(finest, unit)) : 3;
  const force = (forceN: number) => speech.number(fromNewtons(forceN, unit), decimals);
  const percent = (value: number | null) => (value === null ? "–" : speech.number(value, 3));
  const has = (read: (step: ProofStepResult) => unknown) => steps.some((step) => read(step) !== null);
  const optional = (read: (step: ProofStepResult) => number | null, head: string): readonly Column[] =>
    has(read) ? [{ head, cell: (step) => percent(read(step)) }] : [];
  const columns: readonly Column[] = [
    { head: words.colN, cell: (step) => step.n },
    { head: words.colNet(unitName), cell: (step) => force(step.netN) },
    { head: words.colError(unitName), cell: (step) => force(step.errorN) },
    {
      head: words.colErrorPct,
      cell: (step) => percent(step.referenceN > 0 ? (100 * step.errorN) / step.referenceN : null),
    },
    { head: words.colU, cell: (step) => percent(step.uncertainty.expandedPct) },
    { head: words.colK, cell: (step) => speech.number(step.uncertainty.coverageFactor, 2) },
    ...optional((step) => step.b, words.colB),
    ...optional((step) => step.bPrime, words.colBPrime),
    ...optional((step) => step.fc, words.colFc),
    ...optional((step) => step.v, words.colV),
    ...(has((step) => step.class)
      ? [{ head: words.colClass, cell: (step: ProofStepResult) => step.class ?? "–" }]
      : []),
    ...optional(
      (step) => (step.permissibleN === null ? null : (100 * step.permissibleN) / step.referenceN),
      words.colAllowed,
    ),
    ...(has((step) => step.conformity)
      ? [
          {
            head: words.colVerdict,
            text: true,
            cell: (step: ProofStepResult) => (step.conformity === null ? "–" : words[`is.${step.conformity}`]),
          },
        ]
      : []),
  ];
  return (
    <section className="sheet tall" aria-labelledby="steps-title">
      <h2 id="steps-title">{words.steps}</h2>
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col" className="num">
                {words.colForce(unitName)}
              </th>
              {columns.map(({ head, text }) => (
                <th key={head} scope="col" className={text ? undefined : "num"}>
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {steps.map((step) => (
              <tr key={step.referenceN} className={step.conformity === "nonConforming" ? "beyond" : undefined}>
                <th scope="row" className="num">
                  {force(step.referenceN)}
                </th>
                {columns.map(({ head, cell, text }) => (
                  <td key={head} className={text ? undefined : "num"}>
                    {cell(step)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="small soft">
        {words.coverage(speech.percent(shown.result.coverage))}{" "}
        {words.zeroAndCreep(
          shown.result.zeroPct === null ? words.unknown : `${percent(shown.result.zeroPct)} %`,
          shown.result.creepPct === null ? words.unknown : `${percent(shown.result.creepPct)} %`,
        )}
      </p>
    </section>
  );
}
