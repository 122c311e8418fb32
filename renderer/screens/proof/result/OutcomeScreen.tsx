import { useState } from "react";
import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import { proofRefusalWords } from "../../../../app/words/proofRefusalWords.ts";
import { useProgram } from "../../../state/CoreContext.ts";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { ReasonDialog } from "../../../ui/ReasonDialog.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { errorWords } from "../../../words/errorWords.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { localToday } from "../../spindle/localToday.ts";
import { leadTexts } from "../lead/leadTexts.ts";
import { RemainingList } from "../lead/RemainingList.tsx";
import { useLeadActs } from "../lead/useLeadActs.ts";
import { actShort } from "../words/actWords.ts";
import { AboutSection } from "./AboutSection.tsx";
import { FilePanel } from "./FilePanel.tsx";
import { fileTexts } from "./fileTexts.ts";
import { ResultSections } from "./ResultSections.tsx";
import { shownOfRunning } from "./ShownResult.ts";
import { useOutcome } from "./useOutcome.ts";
import "../plan/plan.css";

/** All is taken: what it comes to, and filing it. */
export function OutcomeScreen({ proof }: { readonly proof: RunningProof }) {
  const speech = useSpeech();
  const words = useWords(fileTexts);
  const lead = useWords(leadTexts);
  const common = useWords(commonTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const { outcome, failed } = useOutcome(proof);
  const { act } = useLeadActs(proof.proofId);
  const [repeated, setRepeated] = useState<number>();
  const step = repeated === undefined ? undefined : proof.acts[repeated];
  return (
    <div className="stack outcome plan">
      <header className="place">
        <h1>{words.title(proof.gauge.name)}</h1>
      </header>
      {failed !== undefined && <Problem>{errorWords(failed, speech)}</Problem>}
      {outcome === undefined && failed === undefined && <p role="status">{common.loading}</p>}
      {outcome !== undefined && (
        <>
          {/* Made anew when the result is: what it proposes are then other figures. */}
          <FilePanel key={outcome.nextDue?.on} proof={proof} outcome={outcome} />
          {outcome.result === undefined ? (
            <Problem>
              {words.noResult(proofRefusalWords({ said: outcome.refused, why: outcome.refusedWhy }, speech))}
            </Problem>
          ) : (
            <ResultSections
              shown={shownOfRunning(proof, outcome.result, localToday())}
              judged={outcome.judged}
              change={outcome.change ?? null}
              unit={unit}
            />
          )}
        </>
      )}
      <AboutSection proof={proof} act={act} />
      <section className="stack" aria-labelledby="readings-title">
        <h2 id="readings-title">{words.readings}</h2>
        <p className="soft">{words.repeatHint}</p>
        <RemainingList acts={proof.acts} unit={unit} onRepeat={setRepeated} />
      </section>
      {repeated !== undefined && step !== undefined && (
        <ReasonDialog
          title={lead.repeatStep(actShort(step.act, speech, unit))}
          act={lead.repeat}
          onReason={(reason) => act("proof.repeat", { index: repeated, reason })}
          onClose={() => setRepeated(undefined)}
        >
          {lead.repeatWhy}
        </ReasonDialog>
      )}
    </div>
  );
}
