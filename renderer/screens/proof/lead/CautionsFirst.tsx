import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { problemWords } from "../plan/problemsAt.ts";
import { cautionTexts } from "../words/cautionTexts.ts";
import { leadTexts } from "./leadTexts.ts";

/** Before anything is loaded: what can hurt, and what speaks against plan or reference. */
export function CautionsFirst({ proof, unit }: { readonly proof: RunningProof; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const cautions = useWords(cautionTexts);
  return (
    <>
      <h2 className="what">{words.cautionsTitle}</h2>
      <ol className="cautions">
        {proof.cautions.map((code) => (
          <li key={code}>{cautions[code]}</li>
        ))}
      </ol>
      {proof.problems.length > 0 && (
        <ul className="problems">
          {proof.problems.map((problem) => (
            <li key={problem.code}>{problemWords(problem, speech, unit)}</li>
          ))}
        </ul>
      )}
    </>
  );
}
