import { useState } from "react";
import type { DockingResult, DockingView } from "../../../app/contract/roundViews.ts";
import { EmptyState } from "../../ui/feedback/EmptyState.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { Filed } from "./Filed.tsx";
import { Matching } from "./Matching.tsx";
import { ReadForm } from "./ReadForm.tsx";
import { dockTexts } from "./texts.ts";
import { Undecided } from "./Undecided.tsx";
import "./dock.css";

/** What came back from the round? */
export function Dock({ roundId }: { readonly roundId: string | undefined }) {
  const words = useWords(dockTexts);
  const [view, setView] = useState<DockingView>();
  const [filed, setFiled] = useState<DockingResult>();
  const again = () => {
    setView(undefined);
    setFiled(undefined);
  };
  return (
    <div className="stack dock">
      <header className="place">
        <div>
          <h1>{words.title}</h1>
          <p className="why">{words.why}</p>
        </div>
      </header>
      {filed === undefined ? (
        <>
          <ReadForm roundId={roundId} onRead={setView} />
          {view === undefined && <EmptyState title={words.emptyTitle}>{words.emptyWhy}</EmptyState>}
          {view !== undefined && <Undecided view={view} onRead={setView} />}
          {view !== undefined && view.undecided.length === 0 && view.formatName !== undefined && (
            <Matching key={`${view.dockingId} ${view.takes.length}`} view={view} onFiled={setFiled} />
          )}
          {view?.source === "sheet" && <Matching key={view.dockingId} view={view} onFiled={setFiled} />}
        </>
      ) : (
        <Filed result={filed} onAnother={again} />
      )}
    </div>
  );
}
