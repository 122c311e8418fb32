import { useMemo } from "react";
import { hrefOf } from "../../../state/routeStore.ts";
import { EmptyState } from "../../../ui/feedback/EmptyState.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { errorWords } from "../../../words/errorWords.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { AffectedTable } from "./AffectedTable.tsx";
import { afterTexts } from "./afterTexts.ts";
import { useAffected } from "./useAffected.ts";

/** After a proof: the checks since the last good one, each held against what was found now. */
export function AffectedScreen({ proofId }: { readonly proofId: string }) {
  const speech = useSpeech();
  const words = useWords(afterTexts);
  const common = useWords(commonTexts);
  const { view, failed, askAgain } = useAffected(useMemo(() => ({ proofId }), [proofId]));
  if (failed !== undefined) return <EmptyState title={words.affected}>{errorWords(failed, speech)}</EmptyState>;
  if (view === undefined) return <p role="status">{common.loading}</p>;
  const n = String(view.rows.length);
  return (
    <div className="stack">
      <header className="place">
        <div>
          <h1>{words.affected}</h1>
          <p className="why">
            {view.rows.length === 0
              ? words.affectedNone
              : view.since === undefined
                ? words.affectedAll(n)
                : words.affectedSince(n, speech.plainDate(view.since.on))}{" "}
            {view.rows.length > 0 && <b>{words.changed(view.changedCount)}</b>}
          </p>
          {view.rows.length > 0 && <p className="small soft">{words.nothingRewritten}</p>}
        </div>
        <a className="button" href={hrefOf({ place: "proof", proofId })}>
          {words.toProof}
        </a>
      </header>
      {view.rows.length > 0 && <AffectedTable rows={view.rows} onMarked={askAgain} />}
    </div>
  );
}
