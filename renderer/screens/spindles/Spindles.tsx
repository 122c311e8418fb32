import { useMemo, useState } from "react";
import { useProgram } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { EmptyState } from "../../ui/feedback/EmptyState.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { SpindleForm } from "../spindleForm/SpindleForm.tsx";
import { FilterBar } from "./FilterBar.tsx";
import { FleetSentence } from "./FleetSentence.tsx";
import { filterRows, noFilter } from "./filterRows.ts";
import { rankRows } from "./rankRows.ts";
import { SpindleTable } from "./SpindleTable.tsx";
import { spindlesTexts } from "./texts.ts";
import "./spindles.css";

/** How is each one? The list of all, what to do next on top. */
export function Spindles() {
  const speech = useSpeech();
  const words = useWords(spindlesTexts);
  const common = useWords(commonTexts);
  const { rows, failed } = useList("spindles");
  const { rows: fleet } = useList("fleet");
  const worksUnit = useProgram((state) => state.works?.unitShown ?? "kN");
  const [filter, setFilter] = useState(noFilter);
  const [adding, setAdding] = useState(false);
  const ranked = useMemo(() => rankRows(rows ?? [], fleet), [rows, fleet]);
  const shown = useMemo(() => filterRows(ranked, filter), [ranked, filter]);

  const add = (
    <Button kind={ranked.length === 0 ? "main" : "plain"} onClick={() => setAdding(true)}>
      {words.add}
    </Button>
  );
  return (
    <div className="stack">
      <header className="place">
        <div>
          <h1>
            {words.title} {ranked.length > 0 && <small>{words.ranked(ranked.length)}</small>}
          </h1>
          {ranked.length > 0 && <FleetSentence rows={ranked} fleet={fleet} worksUnit={worksUnit} />}
        </div>
        {ranked.length > 0 && <div className="row">{add}</div>}
      </header>
      {failed !== undefined && <Problem>{errorWords(failed, speech)}</Problem>}
      {rows === undefined && failed === undefined && <p role="status">{common.loading}</p>}
      {rows?.length === 0 && (
        <EmptyState title={words.emptyTitle} act={add}>
          {words.emptyWhy}
        </EmptyState>
      )}
      {ranked.length > 0 && (
        <>
          <FilterBar rows={ranked} filter={filter} onFilter={setFilter} shown={shown.length} />
          {shown.length > 0 ? (
            <SpindleTable rows={shown} fleet={fleet} worksUnit={worksUnit} />
          ) : (
            <p className="row">
              {words.noneFit} <Button onClick={() => setFilter(noFilter)}>{words.clearFilters}</Button>
            </p>
          )}
        </>
      )}
      {adding && <SpindleForm onClose={() => setAdding(false)} />}
    </div>
  );
}
