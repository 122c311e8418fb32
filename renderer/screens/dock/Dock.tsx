import { useEffect, useRef, useState } from "react";
import type { DockingResult, DockingView } from "../../../app/contract/roundViews.ts";
import { EmptyState } from "../../ui/feedback/EmptyState.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { DemoDock } from "./DemoDock.tsx";
import { Filed } from "./Filed.tsx";
import { Matching } from "./Matching.tsx";
import { ReadAs } from "./ReadAs.tsx";
import { ReadForm } from "./ReadForm.tsx";
import { dockTexts } from "./texts.ts";
import { Undecided } from "./Undecided.tsx";
import { useDockScan } from "./useDockScan.ts";
import "./dock.css";

/** What came back from the round? */
export function Dock({ roundId }: { readonly roundId: string | undefined }) {
  const words = useWords(dockTexts);
  const [view, setView] = useState<DockingView>();
  const [filed, setFiled] = useState<DockingResult>();
  const [kept, setKept] = useState(0);
  const scanned = useDockScan(view);
  const read = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was read stands below the form and is gone to, each time anew
  useEffect(() => {
    read.current?.scrollIntoView();
    read.current?.focus({ preventScroll: true });
  }, [view?.dockingId]);
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
          <DemoDock onRead={setView} />
          <ReadForm roundId={roundId} scannedGauge={scanned} formatsKept={kept} onRead={setView} />
          {view === undefined && <EmptyState title={words.emptyTitle}>{words.emptyWhy}</EmptyState>}
          {view !== undefined && (
            <div className="stack" ref={read} tabIndex={-1}>
              <Undecided view={view} onRead={setView} />
              {view.undecided.length === 0 && view.formatName !== undefined && (
                <Matching
                  key={`${view.dockingId} ${view.takes.length} ${view.columns.map((c) => c.field).join()}`}
                  view={view}
                  onRead={setView}
                  onFiled={setFiled}
                />
              )}
              {view.source === "sheet" && (
                <Matching key={view.dockingId} view={view} onRead={setView} onFiled={setFiled} />
              )}
              <ReadAs key={view.dockingId} view={view} onRead={setView} onKept={() => setKept(kept + 1)} />
            </div>
          )}
        </>
      ) : (
        <Filed result={filed} onAnother={again} />
      )}
    </div>
  );
}
