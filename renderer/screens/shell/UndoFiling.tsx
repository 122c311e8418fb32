import { useEffect, useState } from "react";
import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { useKeys } from "../../ui/keys/useKeys.ts";
import { VerdictWord } from "../../ui/verdict/VerdictWord.tsx";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { takeBack } from "../measure/acts.ts";
import { measureTexts } from "../measure/texts.ts";
import { useReport } from "./useReport.ts";

/** What was just filed, for the minute in which one act takes it back; it stays over every screen and a reload. */
export function UndoFiling() {
  const undo = useProgram((state) => state.undo);
  const left = useSecondsLeft(undo?.untilMs);
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const worksUnit = useProgram((state) => state.works?.unitShown);
  const row = useList("spindles").rows?.find((one) => one.last?.checkId === undo?.checkId);
  const shown = undo !== undefined && undo !== null && left > 0;
  const last = row?.last;
  const unit = forceUnitOf(row?.spindle.unitShown ?? worksUnit ?? "kN");
  const text =
    last?.valueN === undefined || row === undefined
      ? words.filedUnknown
      : words.filed(speech.force(last.valueN, unit), row.spindle.name);
  return (
    <>
      {/* There before anything is filed: what comes with its words in it is not read out everywhere. */}
      <p className="unseen" role="status">
        {shown && text}
      </p>
      {shown && <UndoToast text={text} verdict={last?.verdict} left={left} />}
    </>
  );
}

function UndoToast({
  text,
  verdict,
  left,
}: {
  readonly text: string;
  readonly verdict: Verdict | undefined;
  readonly left: number;
}) {
  const core = useCore();
  const report = useReport();
  const words = useWords(measureTexts);
  const run = async () => {
    const answer = takeBack(core);
    const result = await answer;
    if (result === undefined) return;
    if ((await report(Promise.resolve(result))) !== undefined) {
      core.toasts.getState().show({ text: words.takenBack, untilMs: Date.now() + 5_000 });
    }
  };
  useKeys({ keys: { u: run } });
  return (
    <div className="toast filed">
      <span>{text}</span>
      {verdict !== undefined && (
        <span className="paper">
          <VerdictWord verdict={verdict} size="medium" />
        </span>
      )}
      <Button icon="undo" keyHint="U" onClick={run}>
        {words.takeBack} <small aria-hidden="true">{left} s</small>
      </Button>
    </div>
  );
}

function useSecondsLeft(untilMs: number | undefined): number {
  const [now, setNow] = useState(Date.now);
  const left = untilMs === undefined ? 0 : Math.max(0, Math.ceil((untilMs - now) / 1000));
  const running = left > 0;
  useEffect(() => {
    setNow(Date.now());
    if (untilMs === undefined || !running) return;
    const timer = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(timer);
  }, [untilMs, running]);
  return left;
}
