import { useEffect, useRef } from "react";
import type { CycleView, Draft } from "../../../../app/contract/seriesViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { flagTexts } from "../../../../app/words/recordTexts.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { changeSeries, lastCounting } from "../acts.ts";
import { measureTexts } from "../texts.ts";
import { useDropCycle } from "./useDropCycle.ts";
import "./series.css";

/** The clampings as they come, each with its figure, its flags in words, and the way to leave it out. */
export function CycleList({ draft, unit }: { readonly draft: Draft; readonly unit: ForceUnit }) {
  const words = useWords(measureTexts);
  const list = useRef<HTMLOListElement>(null);
  const count = draft.cycles.length;
  const last = lastCounting(draft);
  useEffect(() => {
    if (list.current !== null && count > 0) list.current.scrollLeft = list.current.scrollWidth; // the newest in sight
  }, [count]);
  if (count === 0) return <p className="cycles none soft">{draft.typed === undefined ? words.noSeries : ""}</p>;
  return (
    <ol className="cycles" ref={list} aria-label={words.cycles}>
      {draft.cycles.map((cycle) => (
        <CycleCard
          key={cycle.cycleId}
          cycle={cycle}
          unit={unit}
          outlier={draft.figures.outliers.includes(cycle.number)}
          isLast={cycle === last}
        />
      ))}
    </ol>
  );
}

function CycleCard({
  cycle,
  unit,
  outlier,
  isLast,
}: {
  readonly cycle: CycleView;
  readonly unit: ForceUnit;
  readonly outlier: boolean;
  readonly isLast: boolean;
}) {
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const flags = useWords(flagTexts);
  const drop = useDropCycle();
  const figure = (forceN: number) => speech.forceFigure(forceN, unit);
  const remarks = [
    ...cycle.flags.filter((flag) => flag !== "coarse").map((flag) => flags[flag]),
    ...(outlier ? [words.outlier] : []),
  ];
  const dropped = cycle.dropped !== undefined;
  // An ordinary gauge cannot see the true peak: said by the sign before the figure, not as a fault.
  const coarse = cycle.flags.includes("coarse");
  return (
    <li className={dropped ? "sheet dropped" : "sheet"}>
      <span className="no">{cycle.number}</span>
      <span className="num">{figure(cycle.settledN ?? cycle.peakN)}</span>
      <small className="about">
        {cycle.settledN === undefined ? words.peakOnly : (coarse ? words.peakAtLeast : words.peak)(figure(cycle.peakN))}
        {cycle.noiseN !== undefined && remarks.length === 0 && ` · ${words.noise(figure(cycle.noiseN))}`}
        {remarks.length > 0 && <b> · {remarks.join(", ")}</b>}
      </small>
      {dropped ? <WhyLeftOut cycle={cycle} /> : null}
      <Button kind="quiet" keyHint={isLast ? "D" : undefined} onClick={() => drop(cycle, !dropped)}>
        {dropped ? words.takeIn(cycle.number) : words.leaveOut(cycle.number)}
      </Button>
    </li>
  );
}

/** A clamping left out may say why: it stays with the record. */
function WhyLeftOut({ cycle }: { readonly cycle: CycleView }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(measureTexts);
  const reasons = [words.reasonSeat, words.reasonDirt, words.reasonKnock, words.reasonZero];
  const given = cycle.dropped?.reason ?? "";
  const known =
    given === "" || reasons.includes(given)
      ? reasons
      : [given === "taken again" ? words.takenAgain : given, ...reasons];
  return (
    <select
      aria-label={`${words.whyLeftOut}: ${cycle.number}`}
      value={given === "taken again" ? words.takenAgain : given}
      onChange={(event) =>
        report(changeSeries(core, "series.drop", { cycleId: cycle.cycleId, dropped: { reason: event.target.value } }))
      }
    >
      <option value="">{words.noReason}</option>
      {known.map((reason) => (
        <option key={reason} value={reason}>
          {reason}
        </option>
      ))}
    </select>
  );
}
