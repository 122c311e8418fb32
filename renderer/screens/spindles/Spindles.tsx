import { useEffect, useMemo, useState } from "react";
import { useProgram } from "../../state/CoreContext.ts";
import { parseRoute } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { EmptyState } from "../../ui/feedback/EmptyState.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { SaveTable } from "../../ui/SaveTable.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ImportList } from "../importList/ImportList.tsx";
import { importTexts } from "../importList/texts.ts";
import { SpindleForm } from "../spindleForm/SpindleForm.tsx";
import { CommonMode } from "./CommonMode.tsx";
import { FilterBar } from "./FilterBar.tsx";
import { FleetSentence } from "./FleetSentence.tsx";
import { filterOf, keepInAddress } from "./filterAddress.ts";
import { type Filter, filterRows, noFilter } from "./filterRows.ts";
import { rankRows } from "./rankRows.ts";
import { SpindleTable } from "./SpindleTable.tsx";
import { type DueDates, type Order, sortRows } from "./sortRows.ts";
import { spindleRows } from "./spindleRows.ts";
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
  const [filter, setFilter] = useFilter();
  const importWords = useWords(importTexts);
  const [adding, setAdding] = useState(false);
  const [order, setOrder] = useState<Order>("rank");
  const [importing, setImporting] = useState(false);
  const ranked = useMemo(() => rankRows(rows ?? [], fleet), [rows, fleet]);
  const due: DueDates = useMemo(() => new Map(fleet?.due.map((one) => [one.spindleId, one.dueOn])), [fleet]);
  const shown = useMemo(() => sortRows(filterRows(ranked, filter), order, due), [ranked, filter, order, due]);

  const moves = fleet?.commonMode ?? [];
  const sentence = ranked.length > 0 && <FleetSentence rows={ranked} fleet={fleet} worksUnit={worksUnit} />;
  const add = (
    <Button icon="add" kind={ranked.length === 0 ? "main" : "plain"} onClick={() => setAdding(true)}>
      {words.add}
    </Button>
  );
  const load = (
    <Button icon="takeIn" onClick={() => setImporting(true)}>
      {importWords["act.spindles"]}
    </Button>
  );
  return (
    <div className="stack">
      <header className="place">
        <div>
          <h1>
            {words.title} {ranked.length > 0 && <small>{words.ranked(ranked.length)}</small>}
          </h1>
          {moves.length === 0 && sentence}
        </div>
        {ranked.length > 0 && (
          <div className="row">
            {add}
            {load}
            <SaveTable name="spindles" of={words.title} table={() => spindleRows(shown, due, worksUnit, speech)} />
          </div>
        )}
      </header>
      {failed !== undefined && <Problem>{errorWords(failed, speech)}</Problem>}
      {rows === undefined && failed === undefined && <p role="status">{common.loading}</p>}
      {rows?.length === 0 && (
        <EmptyState
          title={words.emptyTitle}
          act={
            <>
              {add} {load}
            </>
          }
        >
          {words.emptyWhy}
        </EmptyState>
      )}
      {moves.length > 0 && (
        <>
          <CommonMode moves={moves} />
          {sentence}
        </>
      )}
      {ranked.length > 0 && (
        <>
          <FilterBar
            rows={ranked}
            filter={filter}
            onFilter={setFilter}
            shown={shown.length}
            order={order}
            onOrder={setOrder}
          />
          {shown.length > 0 ? (
            <SpindleTable rows={shown} fleet={fleet} worksUnit={worksUnit} />
          ) : (
            <p className="row">
              {words.noneFit} <Button onClick={() => setFilter(noFilter)}>{words.clearFilters}</Button>
            </p>
          )}
        </>
      )}
      {importing && <ImportList what="spindles" onClose={() => setImporting(false)} />}
      {adding && <SpindleForm onClose={() => setAdding(false)} />}
    </div>
  );
}

/** The filter stands in the address, so that reload, back and a link sent on show the same lines. */
function useFilter(): readonly [Filter, (filter: Filter) => void] {
  const [filter, setFilter] = useState(() => filterOf(location.hash));
  useEffect(() => {
    const moved = () => {
      if (parseRoute(location.hash).place === "spindles") setFilter(filterOf(location.hash));
    };
    addEventListener("hashchange", moved);
    return () => removeEventListener("hashchange", moved);
  }, []);
  useEffect(() => keepInAddress(filter), [filter]);
  return [filter, setFilter];
}
