import { useMemo, useState } from "react";
import type { DockingResult, DockingView } from "../../../app/contract/roundViews.ts";
import { remarkWords } from "../../../app/words/remarkWords.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { type Act, afterActs, takenBack } from "./acts.ts";
import { carriedOver } from "./carriedOver.ts";
import { DockingFacts } from "./DockingFacts.tsx";
import { LeftOut } from "./LeftOut.tsx";
import { MatchTable } from "./MatchTable.tsx";
import { answersOf, filingsOf } from "./Placed.ts";
import { QuestionList } from "./QuestionList.tsx";
import { questionTexts } from "./questionTexts.ts";
import { dockTexts } from "./texts.ts";

/** Readings and spindles side by side; nothing is filed before all that is asked has its answer. */
export function Matching({
  view,
  onRead,
  onFiled,
}: {
  readonly view: DockingView;
  readonly onRead: (view: DockingView) => void;
  readonly onFiled: (result: DockingResult) => void;
}) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(dockTexts);
  const asking = useWords(questionTexts);
  const [acts, setActs] = useState<readonly Act[]>([]);
  const placed = useMemo(() => afterActs(view, acts), [view, acts]);
  const onMove = (group: number, stop: number | undefined) => setActs([...acts, { kind: "move", group, stop }]);
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
  /** Matched anew with how things stand now; what was answered, moved and typed stays where it still has its place. */
  const lookAgain = async () => {
    const now = await report(core.client.call("docking.read", { dockingId: view.dockingId }));
    if (now === undefined) return;
    setActs(carriedOver(view, acts, now));
    onRead(now);
  };
  const file = async () => {
    setBusy(true);
    const why = new Map(view.questions.flatMap((q) => q.takes.map((t) => [t, q.code])));
    const result = await core.client.call("docking.accept", {
      dockingId: view.dockingId,
      filings,
      leftOut: left.map((take) => ({ take, why: why.get(take) ?? "byHand" })),
      answers: answersOf(view, placed),
      reasons: Object.fromEntries(warnings.flatMap(({ code }) => (reasons[code] ? [[code, reasons[code]]] : []))),
      ...(clockConfirmed === true ? { clockConfirmed } : {}),
    });
    setBusy(false);
    if (!result.ok && result.error.key === "clockBehind") setClockConfirmed(false);
    const value = await report(Promise.resolve(result));
    if (value !== undefined) onFiled(value);
    else if (!result.ok && (result.error.key === "roundChanged" || result.error.key === "dockedMeanwhile"))
      await lookAgain();
  };
  if (view.takes.length === 0) return <DockingFacts view={view} onRead={onRead} />;
  return (
    <>
      <DockingFacts view={view} onRead={onRead} />
      <QuestionList
        view={view}
        answers={placed.answers}
        onAnswer={(at, said) => setActs([...acts, { kind: "answer", at, said }])}
        onTakeBack={(at) => setActs(takenBack(view, acts, at))}
      />
      <section className="sheet tall">
        <p className="soft">{words.dragHint}</p>
        <MatchTable view={view} placed={placed} onMove={onMove} />
      </section>
      <LeftOut view={view} placed={placed} onMove={onMove} />
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
        {acts.length > 0 && (
          <Button disabled={busy} onClick={() => setActs(acts.slice(0, -1))}>
            {asking.takeBackStep}
          </Button>
        )}
        {open > 0 && <span role="status">{words.answerFirst(open)}</span>}
        {mixed && <span role="status">{words.twoUnits}</span>}
      </div>
    </>
  );
}
