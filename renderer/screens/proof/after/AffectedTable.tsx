import { useState } from "react";
import type { AffectedRow } from "../../../../app/contract/proofViews.ts";
import { fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { useCore, useProgram } from "../../../state/CoreContext.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { Button } from "../../../ui/Button.tsx";
import { ReasonDialog } from "../../../ui/ReasonDialog.tsx";
import { VerdictWord } from "../../../ui/verdict/VerdictWord.tsx";
import { forceUnitOf, unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { afterTexts } from "./afterTexts.ts";

/** The checks in doubt, those whose verdict would change first; ticked ones are marked for a new measurement. */
export function AffectedTable({
  rows,
  onMarked,
}: {
  readonly rows: readonly AffectedRow[];
  readonly onMarked: () => void;
}) {
  const core = useCore();
  const speech = useSpeech();
  const report = useReport();
  const words = useWords(afterTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const [asking, setAsking] = useState(false);
  const open = rows.filter(({ marked }) => !marked);
  const figure = (forceN: number | undefined) => (forceN == null ? "–" : speech.number(fromNewtons(forceN, unit), 2));
  const toggle = (checkId: string) => {
    const next = new Set(ticked);
    if (!next.delete(checkId)) next.add(checkId);
    setTicked(next);
  };
  const mark = async (reason: string) => {
    const made = await report(core.client.call("proofs.markRemeasure", { checkIds: [...ticked], reason }));
    if (made === undefined) return;
    setAsking(false);
    setTicked(new Set());
    core.toasts.getState().show({ text: words.markedNow(String(made.marked)), untilMs: Date.now() + 6_000 });
    onMarked();
  };
  return (
    <section className="sheet tall" aria-label={words.affected}>
      <div className="row act-line">
        <Button
          onClick={() =>
            setTicked(new Set(open.filter(({ verdictChanges }) => verdictChanges).map(({ checkId }) => checkId)))
          }
        >
          {words.tickChanged}
        </Button>
        <Button kind="main" disabled={ticked.size === 0} onClick={() => setAsking(true)}>
          {words.mark(ticked.size)}
        </Button>
      </div>
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.colTick}</th>
              <th scope="col">{words.colSpindle}</th>
              <th scope="col">{words.colCheck}</th>
              <th scope="col" className="num">
                {words.colFiled(unitText(unit))}
              </th>
              <th scope="col" className="num">
                {words.colNow(unitText(unit))}
              </th>
              <th scope="col">{words.colWas}</th>
              <th scope="col">{words.colWouldBe}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(
              ({ checkId, row, spindleName, marked, filedN, correctedN, filedVerdict, wouldBe, verdictChanges }) => (
                <tr key={checkId}>
                  <td>
                    {marked ? (
                      words.marked
                    ) : (
                      <label className="tick">
                        <input
                          type="checkbox"
                          aria-label={words.tickOf(spindleName, speech.date(row.measuredAtMs))}
                          checked={ticked.has(checkId)}
                          onChange={() => toggle(checkId)}
                        />
                      </label>
                    )}
                  </td>
                  <th scope="row">{spindleName}</th>
                  <td>
                    <a href={hrefOf({ place: "spindle", spindleId: row.spindleId, checkId })}>
                      {speech.date(row.measuredAtMs)}
                    </a>
                  </td>
                  <td className="num">{figure(filedN)}</td>
                  <td className="num">{figure(correctedN)}</td>
                  <td>
                    <VerdictWord verdict={filedVerdict} />
                  </td>
                  <td>
                    {verdictChanges ? <VerdictWord verdict={wouldBe} /> : <span className="soft">{words.same}</span>}
                  </td>
                </tr>
              ),
            )}
          </tbody>
        </table>
      </div>
      {asking && (
        <ReasonDialog
          title={words.mark(ticked.size)}
          act={words.mark(ticked.size)}
          onReason={mark}
          onClose={() => setAsking(false)}
        >
          {words.nothingRewritten}
        </ReasonDialog>
      )}
    </section>
  );
}
