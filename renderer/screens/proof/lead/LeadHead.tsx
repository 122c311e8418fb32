import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { NextAct } from "../../../../app/proof/plan/nextAct.ts";
import { methodTexts } from "../../../../app/words/proofMethodTexts.ts";
import { Button } from "../../../ui/Button.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { judgedTexts } from "../words/proofStateTexts.ts";
import { leadTexts } from "./leadTexts.ts";

/** Which gauge, how, where in the plan. */
export function LeadHead({
  proof,
  next,
  onPutDown,
}: {
  readonly proof: RunningProof;
  readonly next: Extract<NextAct, { kind: "act" }>;
  readonly onPutDown: () => void;
}) {
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const methods = useWords(methodTexts);
  const judged = useWords(judgedTexts);
  const { plan } = proof;
  const run = next.act.kind === "cautions" ? undefined : next.act.run;
  const at = plan.runs.findIndex((planned) => planned.run === run);
  return (
    <header className="place">
      <div>
        <h1>{words.title(proof.gauge.name)}</h1>
        <p className="small soft">
          {[methods[plan.method], judged[proof.as], proof.reference.name, proof.adapter?.name]
            .filter((part) => part !== undefined)
            .join(" · ")}
        </p>
      </div>
      <div className="row">
        <span className="where">
          {at >= 0 &&
            `${words.runOf(
              plan.runs[at]!.run,
              String(at + 1),
              String(plan.runs.length),
              speech.number(plan.runs[at]!.positionDeg),
            )} · `}
          {words.remaining(next.remaining)}
        </span>
        {next.act.kind !== "cautions" && (
          <Button keyHint="P" onClick={onPutDown}>
            {words.putDown}
          </Button>
        )}
      </div>
    </header>
  );
}
