import type { ProofOutcome } from "../../../../app/contract/proofViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { CurveSection } from "./CurveSection.tsx";
import { ProofBudget } from "./ProofBudget.tsx";
import { ResultCharts } from "./ResultCharts.tsx";
import { ResultSentence } from "./ResultSentence.tsx";
import type { ShownResult } from "./ShownResult.ts";
import { StepsTable } from "./StepsTable.tsx";
import "./result.css";

/** A result, the same for a proof in work and a filed one: sentence, steps, pictures, curve, budget. */
export function ResultSections({
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
  return (
    <>
      <ResultSentence shown={shown} judged={judged} change={change} unit={unit} />
      <StepsTable shown={shown} unit={unit} />
      <ResultCharts shown={shown} unit={unit} />
      <div className="halves">
        <CurveSection shown={shown} unit={unit} />
        <ProofBudget shown={shown} unit={unit} />
      </div>
    </>
  );
}
