import { useState } from "react";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { Caution } from "../../ui/feedback/Caution.tsx";
import { EmptyState } from "../../ui/feedback/EmptyState.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { DueTable } from "./DueTable.tsx";
import { LabelsDialog } from "./LabelsDialog.tsx";
import { RoundCard } from "./RoundCard.tsx";
import { RoundForm } from "./RoundForm.tsx";
import { saveFile } from "./saveFile.ts";
import { roundsTexts } from "./texts.ts";
import { useRounds } from "./useRounds.ts";
import "./rounds.css";

/** What to measure today? */
export function Rounds() {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(roundsTexts);
  const common = useWords(commonTexts);
  const { due, rounds, reload } = useRounds();
  const spindles = useList("spindles").rows;
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const [asked, setAsked] = useState<"round" | "labels">();
  if (due === undefined || spindles === undefined) return <p role="status">{common.loading}</p>;
  if (due.rows.length === 0) return <EmptyState title={words.emptyTitle}>{words.emptyWhy}</EmptyState>;
  const calendar = async () => {
    const file = await report(core.client.call("rounds.calendar", { language: speech.language }));
    if (file !== undefined) saveFile(file);
  };
  const overdue = due.rows.filter((row) => row.overdueDays > 0).length;
  return (
    <div className="stack rounds">
      <header className="place">
        <div>
          <h1>{words.title}</h1>
          <p className="why">{words.why}</p>
        </div>
        <div className="row">
          <Button onClick={calendar}>{words.calendar}</Button>
          <Button icon="print" onClick={() => setAsked("labels")}>
            {words.labels}
          </Button>
        </div>
      </header>
      <Caution title={words.careTitle}>{words.care}</Caution>
      <section className="sheet tall" aria-labelledby="due-title">
        <h2 id="due-title">
          {words.due} <small>{words.dueCount(overdue, due.rows.length)}</small>
        </h2>
        <DueTable due={due} spindles={spindles} ticked={ticked} onTicked={setTicked} />
        <div className="row act-line">
          <Button kind="main" disabled={ticked.size === 0} onClick={() => setAsked("round")}>
            {words.make(ticked.size)}
          </Button>
          {ticked.size === 0 && <span className="soft">{words.nothingTicked}</span>}
        </div>
      </section>
      <section className="stack" aria-labelledby="rounds-title">
        <h2 id="rounds-title">{words.open}</h2>
        {rounds?.length === 0 && <p className="soft">{words.none}</p>}
        {rounds?.slice(0, 30).map((round, i) => (
          <RoundCard key={round.roundId} round={round} open={i === 0 && round.state === "open"} onStale={reload} />
        ))}
      </section>
      {asked === "round" && (
        <RoundForm
          today={due.today}
          spindleIds={due.rows.map((r) => r.spindleId).filter((id) => ticked.has(id))}
          onClose={() => setAsked(undefined)}
          onMade={() => {
            setAsked(undefined);
            setTicked(new Set());
          }}
        />
      )}
      {asked === "labels" && <LabelsDialog onClose={() => setAsked(undefined)} />}
    </div>
  );
}
