import type { ProofPage } from "../../../../app/contract/proofViews.ts";
import { ownPlanName } from "../../../../app/proof/plan/ownPlanName.ts";
import { methodTexts } from "../../../../app/words/proofMethodTexts.ts";
import { proofRefusalWords } from "../../../../app/words/proofRefusalWords.ts";
import { useProgram } from "../../../state/CoreContext.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { EmptyState } from "../../../ui/feedback/EmptyState.tsx";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { judgedTexts } from "../words/proofStateTexts.ts";
import { FiledReadings } from "./FiledReadings.tsx";
import { FoundAndLeft } from "./FoundAndLeft.tsx";
import { fileTexts } from "./fileTexts.ts";
import { ProofReports } from "./ProofReports.tsx";
import { ResultSections } from "./ResultSections.tsx";
import { shownOfFiled } from "./ShownResult.ts";
import { useProofPage } from "./useProofPage.ts";

/** A filed proof: what came of it, what it was made of, and what follows. */
export function ProofScreen({ proofId }: { readonly proofId: string }) {
  const speech = useSpeech();
  const words = useWords(fileTexts);
  const common = useWords(commonTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const { page, failed } = useProofPage(proofId);
  if (failed !== undefined) return <EmptyState title={words.notThere}>{words.notThereWhy}</EmptyState>;
  if (page === undefined) return <p role="status">{common.loading}</p>;
  const shown = shownOfFiled(page);
  return (
    <div className="stack">
      <Head page={page} />
      <ProofReports page={page} />
      {shown === undefined ? (
        <Problem>
          {words.noResult(proofRefusalWords({ said: page.proof.refused, why: page.proof.refusedWhy }, speech))}
        </Problem>
      ) : (
        <ResultSections shown={shown} judged={page.proof.judged} change={page.proof.change} unit={unit} />
      )}
      <FoundAndLeft page={page} unit={unit} />
      <FiledReadings page={page} unit={unit} />
    </div>
  );
}

function Head({ page }: { readonly page: ProofPage }) {
  const speech = useSpeech();
  const words = useWords(fileTexts);
  const methods = useWords(methodTexts);
  const judged = useWords(judgedTexts);
  const { proof, row, operatorName } = page;
  const curve = row.inUse ? words.inUse : row.curveTaken ? words.wasTaken : words.notTaken;
  return (
    <header className="place">
      <div>
        <h1>{words.page(proof.gauge.name, speech.plainDate(proof.on))}</h1>
        <p className="why">
          {[
            methods[proof.plan.method],
            ownPlanName(proof.plan),
            judged[proof.as],
            words.against(proof.reference.name),
            operatorName === undefined ? undefined : words.by(operatorName),
          ]
            .filter((part) => part !== undefined)
            .join(" · ")}
        </p>
        <p className="why">
          {curve} {proof.dueOn !== null && `${words.dueOn} ${speech.plainDate(proof.dueOn)}.`}
        </p>
      </div>
      <div className="row">
        <a className="button" href={hrefOf({ place: "proof", proofId: proof.proofId, part: "affected" })}>
          {words.toAffected}
        </a>
        <a className="button" href={hrefOf({ place: "gauge", gaugeId: proof.gaugeId })}>
          {words.toGauge}
        </a>
      </div>
    </header>
  );
}
