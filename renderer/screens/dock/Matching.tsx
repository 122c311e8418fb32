import { useMemo, useState } from "react";
import type { DockingResult, DockingView } from "../../../app/contract/roundViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { remarkWords } from "../../words/records/remarkWords.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { DockingFacts } from "./DockingFacts.tsx";
import { LeftOut } from "./LeftOut.tsx";
import { MatchTable } from "./MatchTable.tsx";
import { answer, filingsOf, move, placedOf } from "./Placed.ts";
import { QuestionList } from "./QuestionList.tsx";
import { dockTexts } from "./texts.ts";

/** Readings and spindles side by side; nothing is filed before all that is asked has its answer. */
export function Matching({
  view,
  onFiled,
}: {
  readonly view: DockingView;
  readonly onFiled: (result: DockingResult) => void;
}) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(dockTexts);
  const [placed, setPlaced] = useState(() => placedOf(view));
  const [reasons, setReasons] = useState<Readonly<Record<string, string>>>({});
  const [clockConfirmed, setClockConfirmed] = useState<boolean>();
  const [busy, setBusy] = useState(false);
  const { filings, mixed, left } = useMemo(() => filingsOf(view, placed), [view, placed]);
  const filedIds = new Set(filings.map((f) => f.spindleId));
  const warnings = view.warnings.filter((w) => w.spindleIds.some((id) => filedIds.has(id)));
  const open =
    view.questions.filter((_, i) => placed.answers[i] === undefined).length +
    warnings.filter((w) => w.weight === "ask" && (reasons[w.code] ?? "").trim().length < 3).length +
    warnings.filter((w) => w.weight === "block").length;
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const nameOf = (spindleId: string) => view.stops.find((s) => s.spindleId === spindleId)?.name ?? "";
  const file = async () => {
    setBusy(true);
    const why = new Map(view.questions.flatMap((q) => q.takes.map((t) => [t, q.code])));
    const result = await core.client.call("docking.accept", {
      dockingId: view.dockingId,
      filings,
      leftOut: left.map((take) => ({ take, why: why.get(take) ?? "byHand" })),
      answers: view.questions.map((q, i) => ({ code: q.code, answer: placed.answers[i] ?? "none" })),
      reasons: Object.fromEntries(warnings.flatMap(({ code }) => (reasons[code] ? [[code, reasons[code]]] : []))),
      ...(clockConfirmed === true ? { clockConfirmed } : {}),
    });
    setBusy(false);
    if (!result.ok && result.error.key === "clockBehind") setClockConfirmed(false);
    const value = await report(Promise.resolve(result));
    if (value !== undefined) onFiled(value);
  };
  if (view.takes.length === 0) return <DockingFacts view={view} />;
  return (
    <>
      <DockingFacts view={view} />
      <QuestionList
        view={view}
        placed={placed}
        onAnswer={(at, said) => setPlaced(answer(placed, at, view.questions[at]!, said))}
      />
      <section className="sheet tall">
        <p className="soft">{words.dragHint}</p>
        <MatchTable
          view={view}
          placed={placed}
          onMove={(group, stop) => setPlaced(move(placed, group, stop, view.questions))}
        />
      </section>
      <LeftOut
        view={view}
        placed={placed}
        onMove={(group, stop) => setPlaced(move(placed, group, stop, view.questions))}
      />
      {warnings.length > 0 && (
        <section className="sheet form">
          {warnings.map((w) => {
            const about = `${remarkWords(w, speech, unit)} (${speech.list(w.spindleIds.filter((id) => filedIds.has(id)).map(nameOf))})`;
            return w.weight === "block" ? (
              <p key={w.code} role="alert">
                {words.warningBlock(about)}
              </p>
            ) : (
              <TextField
                key={w.code}
                label={words.warningAsk(about)}
                value={reasons[w.code] ?? ""}
                onText={(text) => setReasons({ ...reasons, [w.code]: text })}
                wide
              />
            );
          })}
        </section>
      )}
      <div className="row accept-line">
        {clockConfirmed !== undefined && (
          <Tick checked={clockConfirmed} onTick={setClockConfirmed}>
            {words.clockDoubt}
          </Tick>
        )}
        <Button kind="main" busy={busy} disabled={open > 0 || mixed} onClick={file}>
          {words.accept(filings.length, left.length)}
        </Button>
        {open > 0 && <span role="status">{words.answerFirst(open)}</span>}
        {mixed && <span role="status">{words.twoUnits}</span>}
      </div>
    </>
  );
}
