import type { FleetView, SpindleRow } from "../../../app/contract/recordViews.ts";
import { useList } from "../../state/useList.ts";
import { verdictTexts } from "../../words/records/verdictTexts.ts";
import { whyWords } from "../../words/records/whyWords.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindlesTexts } from "./texts.ts";

/** What a colleague would say first: a gauge gone off before any spindle, else the spindle to see to. */
export function FleetSentence({
  rows,
  fleet,
  worksUnit,
}: {
  readonly rows: readonly SpindleRow[];
  readonly fleet: FleetView | undefined;
  readonly worksUnit: string;
}) {
  const speech = useSpeech();
  const words = useWords(spindlesTexts);
  const verdictWords = useWords(verdictTexts);
  const gauges = useList("gauges").rows;
  const adapters = useList("adapters").rows;
  const common = fleet?.commonMode[0];
  if (common !== undefined) {
    const nameOf = ({ by, id }: { readonly by: "gauge" | "adapter"; readonly id: string }) =>
      (by === "gauge"
        ? gauges?.find((row) => row.gauge.gaugeId === id)?.gauge.name
        : adapters?.find((row) => row.adapter.adapterId === id)?.adapter.name) ?? "?";
    const others = common.or.map(nameOf);
    return (
      <p className="why">
        <b>{words.lookAtGauge(nameOf(common))}</b>{" "}
        {words.movedTogether(
          common.spindleIds.length,
          speech.date(common.sinceMs),
          speech.percent(Math.abs(common.shift), 1),
        )}
        {others.length > 0 && ` ${words.orOther(speech.list(others))}`}
      </p>
    );
  }
  const first = rows[0];
  if (first === undefined || rows.every((row) => row.last === undefined))
    return <p className="why">{words.noneMeasured}</p>;
  const rest = rows.slice(1);
  const acts = rest.filter((row) => row.verdict === "stop" || row.verdict === "act").length;
  const watches = rest.filter((row) => row.verdict === "watch").length;
  if (first.verdict === "good" && acts + watches === 0) return <p className="why">{words.allGood}</p>;
  const unit = forceUnitOf(first.spindle.unitShown ?? worksUnit);
  return (
    <p className="why">
      <b>{words.worst(first.spindle.name)}</b>{" "}
      {words.worstWhy(verdictWords[first.verdict ?? "never"], whyWords(first, speech, unit))}
      {acts > 0 && ` ${words.othersAct(acts)}`}
      {watches > 0 && ` ${words.othersWatch(watches)}`}
    </p>
  );
}
