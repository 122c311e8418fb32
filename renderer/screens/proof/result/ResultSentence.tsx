import type { ProofOutcome } from "../../../../app/contract/proofViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { proofRemarkWords } from "../../../../app/words/proofRemarkWords.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { resultTexts } from "./resultTexts.ts";
import type { ShownResult } from "./ShownResult.ts";

/** What a colleague would say of the result, with its figures; why a class is absent; what the tables rest on. */
export function ResultSentence({
  shown,
  judged,
  change,
  unit,
}: {
  readonly shown: ShownResult;
  readonly judged: ProofOutcome["judged"];
  readonly change: ProofOutcome["change"];
  readonly unit: ForceUnit;
}) {
  const speech = useSpeech();
  const words = useWords(resultTexts);
  const { result, method } = shown;
  const percent = (value: number) => `${speech.number(value, 2)} %`;
  const force = (forceN: number) => speech.force(forceN, unit);
  const loaded = result.steps.filter(({ referenceN }) => referenceN > 0);
  const worst = loaded.reduce<(typeof loaded)[number] | undefined>(
    (most, step) =>
      most === undefined || Math.abs(step.errorN / step.referenceN) > Math.abs(most.errorN / most.referenceN)
        ? step
        : most,
    undefined,
  );
  const range = result.classRanges.find((one) => one.class === result.class);
  const hasClasses = method === "iso376" || method === "astm-e74";
  const memory = result.remarks.filter(({ code }) => code === "tableFromMemory");
  const others = result.remarks.filter(({ code }) => code !== "tableFromMemory");
  return (
    <section className="sheet result">
      <p className="headline">
        {result.conformity !== null && words[result.conformity]}
        {hasClasses &&
          (range === undefined ? words.noClass : words.classFrom(range.class, force(range.fromN), force(range.toN)))}
        {result.conformity === null && !hasClasses && worst !== undefined && words[judged]}
      </p>
      {hasClasses && result.missing.length > 0 && (
        <ul className="dots">
          {result.missing.map((remark) => (
            <li key={remark.code}>{proofRemarkWords(remark, speech)}</li>
          ))}
        </ul>
      )}
      {worst !== undefined && (
        <p className="why">
          {words.worst(
            percent((100 * worst.errorN) / worst.referenceN),
            force(worst.referenceN),
            `±${percent((100 * worst.uncertainty.expandedN) / worst.referenceN)}`,
          )}{" "}
          {change !== null &&
            words.change(percent(100 * change.relative), percent(100 * change.expanded), force(change.atN))}{" "}
          {(result.conformity !== null || hasClasses) && words[judged]}
        </p>
      )}
      {memory.map((remark) => (
        <p key={remark.code} className="memory">
          {proofRemarkWords(remark, speech)}
        </p>
      ))}
      {others.length > 0 && (
        <>
          <h3>{words.remarks}</h3>
          <ul className="dots">
            {others.map((remark) => (
              <li key={`${remark.code} ${remark.about}`}>{proofRemarkWords(remark, speech)}</li>
            ))}
          </ul>
        </>
      )}
      <p className="accredited">{shown.accreditation ?? words.notAccredited}</p>
    </section>
  );
}
