import { useState } from "react";
import type { ProofPage } from "../../../../app/contract/proofViews.ts";
import type { Proof } from "../../../../app/ledger/proof.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { Button } from "../../../ui/Button.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { AdjustDialog } from "../after/AdjustDialog.tsx";
import { fileTexts } from "./fileTexts.ts";

/** The gauge before and after it was adjusted, load by load; where nothing was adjusted, how to say that it was. */
export function FoundAndLeft({ page, unit }: { readonly page: ProofPage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(fileTexts);
  const [adjusting, setAdjusting] = useState(false);
  const { proof, other, adjustment } = page;
  const found = proof.as === "found" ? proof : other;
  const left = proof.as === "left" ? proof : other;
  return (
    <section className="sheet tall" aria-labelledby="pair-title">
      <h2 id="pair-title">{words.pair}</h2>
      {adjustment === undefined ? (
        proof.as === "found" && (
          <>
            <p className="why">{words.pairNone}</p>
            <div className="row act-line">
              <Button onClick={() => setAdjusting(true)}>{words.adjust}</Button>
            </div>
          </>
        )
      ) : (
        <p className="why">{words.adjusted(speech.date(Date.parse(adjustment.at)), adjustment.what)}</p>
      )}
      {found !== undefined && left !== undefined && <PairTable found={found} left={left} unit={unit} />}
      {other !== undefined && (
        <p>
          <a href={hrefOf({ place: "proof", proofId: other.proofId })}>{words.otherProof}</a>
        </p>
      )}
      {adjusting && (
        <AdjustDialog gaugeId={proof.gaugeId} asFoundProofId={proof.proofId} onClose={() => setAdjusting(false)} />
      )}
    </section>
  );
}

/** Loads are the same where they lie within 1 % of the greatest, as the fits take them. */
function PairTable({ found, left, unit }: { readonly found: Proof; readonly left: Proof; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(fileTexts);
  const steps = found.result?.steps.filter(({ referenceN }) => referenceN > 0) ?? [];
  const near = 0.01 * Math.max(0, ...steps.map(({ referenceN }) => referenceN));
  const percent = (step: { readonly errorN: number; readonly referenceN: number } | undefined) =>
    step === undefined ? "–" : speech.number((100 * step.errorN) / step.referenceN, 3);
  return (
    <div className="sideways">
      <table>
        <thead>
          <tr>
            <th scope="col" className="num">
              {words.colStep}
            </th>
            <th scope="col" className="num">
              {words.colFound}
            </th>
            <th scope="col" className="num">
              {words.colLeft}
            </th>
          </tr>
        </thead>
        <tbody>
          {steps.map((step) => (
            <tr key={step.referenceN}>
              <th scope="row" className="num">
                {speech.force(step.referenceN, unit, 1)}
              </th>
              <td className="num">{percent(step)}</td>
              <td className="num">
                {percent(left.result?.steps.find((one) => Math.abs(one.referenceN - step.referenceN) <= near))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
