import { useStore } from "zustand";
import { useCore } from "../../../state/CoreContext.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { EmptyState } from "../../../ui/feedback/EmptyState.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { OutcomeScreen } from "../result/OutcomeScreen.tsx";
import { LeadScreen } from "./LeadScreen.tsx";
import { leadTexts } from "./leadTexts.ts";
import { PutDownScreen } from "./PutDownScreen.tsx";
import "./lead.css";

/** The proof in work, at whatever point it stands. */
export function ProvingScreen() {
  const core = useCore();
  const words = useWords(leadTexts);
  const common = useWords(commonTexts);
  const { proof, asked } = useStore(core.proof);
  if (!asked) return <p role="status">{common.loading}</p>;
  if (proof === undefined)
    return (
      <EmptyState
        title={words.noneInWork}
        act={
          <a className="button" href={hrefOf({ place: "gauges" })}>
            {words.toGauges}
          </a>
        }
      >
        {words.noneInWorkWhy}
      </EmptyState>
    );
  switch (proof.next.kind) {
    case "act":
      return <LeadScreen proof={proof} next={proof.next} />;
    case "putDown":
      return <PutDownScreen proof={proof} next={proof.next} />;
    case "finished":
      return <OutcomeScreen proof={proof} />;
  }
}
