import { useMemo } from "react";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { errorWords } from "../../../words/errorWords.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { AffectedTable } from "../after/AffectedTable.tsx";
import { afterTexts } from "../after/afterTexts.ts";
import { useAffected } from "../after/useAffected.ts";
import { factorTexts } from "./factorTexts.ts";

/** The checks made with the scale an adapter had before, each held against the one found now. */
export function AdapterDoubt({
  adapterId,
  scale,
  relative,
}: {
  readonly adapterId: string;
  readonly scale: number;
  readonly relative: number;
}) {
  const speech = useSpeech();
  const words = useWords(factorTexts);
  const after = useWords(afterTexts);
  const common = useWords(commonTexts);
  const { view, failed, askAgain } = useAffected(
    useMemo(() => ({ adapterId, scale, relative }), [adapterId, scale, relative]),
  );
  if (failed !== undefined) return <Problem>{errorWords(failed, speech)}</Problem>;
  if (view === undefined) return <p role="status">{common.loading}</p>;
  const n = String(view.rows.length);
  return (
    <div className="stack">
      <p>
        {view.rows.length === 0
          ? words.noneMade
          : view.since === undefined
            ? words.madeWith(n)
            : words.madeSince(n, speech.plainDate(view.since.on))}{" "}
        {view.rows.length > 0 && <b>{after.changed(view.changedCount)}</b>}
      </p>
      {view.rows.length > 0 && (
        <>
          <p className="small soft">{after.nothingRewritten}</p>
          <AffectedTable rows={view.rows} onMarked={askAgain} />
        </>
      )}
    </div>
  );
}
