import type { CheckDetail, CheckRow, SpindlePage } from "../../../../app/contract/recordViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { VerdictWord } from "../../../ui/verdict/VerdictWord.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useToolNames } from "../useToolNames.ts";
import { trendTexts } from "./trendTexts.ts";

/** The figures of the check under the pointer or the arrow keys. */
export function Picked({
  row,
  point,
  detail,
  unit,
}: {
  readonly row: CheckRow;
  readonly point: SpindlePage["trend"]["points"][number] | undefined;
  readonly detail: CheckDetail | undefined;
  readonly unit: ForceUnit;
}) {
  const speech = useSpeech();
  const words = useWords(trendTexts);
  const tools = useToolNames();
  const value = row.valueN === undefined ? "–" : speech.forceWithin(row.valueN, row.expandedN, unit);
  const change = row.dropFromBaseline === undefined ? undefined : speech.percent(-row.dropFromBaseline, 1);
  const [gauge, adapter] = [tools.gauge(row.gaugeId), tools.adapter(row.adapterId)];
  const counter = detail?.counter ?? undefined;
  return (
    <span className="row">
      <b>{speech.date(row.measuredAtMs)}</b>
      <span>{value}</span>
      <VerdictWord verdict={row.verdict} />
      <small>
        {[
          change,
          gauge !== undefined && point?.gaugeChanged === true ? words.tool(gauge) : gauge,
          adapter !== undefined && point?.adapterChanged === true ? words.tool(adapter) : adapter,
          counter === undefined ? undefined : words.counts(speech.number(counter)),
          point?.stray === true ? words.stray : undefined,
        ]
          .filter((part) => part !== undefined)
          .join(" · ")}
      </small>
    </span>
  );
}
