import { useMemo } from "react";
import type { FleetView, SpindleRow } from "../../../app/contract/recordViews.ts";
import type { LikeComparison } from "../../../app/trend/compareLike.ts";
import type { FleetPlace } from "../../../app/trend/rankFleet.ts";
import { likeShort } from "../../../app/words/likeWords.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { useWindowed } from "../../ui/useWindowed.ts";
import { VerdictWord } from "../../ui/verdict/VerdictWord.tsx";
import { whyWords } from "../../words/records/whyWords.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useToolNames } from "../spindle/useToolNames.ts";
import { Spark } from "./Spark.tsx";
import { spindlesTexts } from "./texts.ts";
import { WhenBar } from "./WhenBar.tsx";

/** From here on the risk is named beside the reason. */
const WORTH_SAYING = 0.05;

/** One line a spindle. Of a long list only the lines in sight are made. */
export function SpindleTable({
  rows,
  fleet,
  worksUnit,
}: {
  readonly rows: readonly SpindleRow[];
  readonly fleet: FleetView | undefined;
  readonly worksUnit: string;
}) {
  const words = useWords(spindlesTexts);
  const places = useMemo(() => new Map(fleet?.rows.map((row) => [row.spindleId, row])), [fleet]);
  const alike = useMemo(() => new Map(fleet?.like.map((like) => [like.spindleId, like])), [fleet]);
  const { body, from, to, above, below } = useWindowed(rows.length);
  return (
    <div className="sheet tall">
      <table className="spindles" aria-rowcount={rows.length + 1}>
        <thead>
          <tr>
            <th scope="col">{words.verdict}</th>
            <th scope="col">{words.colSpindle}</th>
            <th scope="col">{words.colSpark}</th>
            <th scope="col" className="num">
              {words.colLast}
            </th>
            <th scope="col">{words.colWhy}</th>
            <th scope="col">{words.colWhen}</th>
          </tr>
        </thead>
        <tbody ref={body}>
          {above > 0 && <tr className="gap" style={{ height: above }} />}
          {rows.slice(from, to).map((row, i) => (
            <Line
              key={row.spindle.spindleId}
              row={row}
              place={places.get(row.spindle.spindleId)}
              like={alike.get(row.spindle.spindleId)}
              moves={fleet?.commonMode.filter((move) => move.spindleIds.includes(row.spindle.spindleId)) ?? []}
              worksUnit={worksUnit}
              index={from + i + 2}
            />
          ))}
          {below > 0 && <tr className="gap" style={{ height: below }} />}
        </tbody>
      </table>
    </div>
  );
}

function Line({
  row,
  place,
  like,
  moves,
  worksUnit,
  index,
}: {
  readonly row: SpindleRow;
  readonly place: FleetPlace | undefined;
  readonly like: LikeComparison | undefined;
  /** What this spindle moved along with. */
  readonly moves: FleetView["commonMode"];
  readonly worksUnit: string;
  readonly index: number;
}) {
  const speech = useSpeech();
  const words = useWords(spindlesTexts);
  const verdictWords = useWords(verdictTexts);
  const tools = useToolNames();
  const { spindle, last, verdict } = row;
  const standsOut = likeShort(like, speech);
  const unit = forceUnitOf(spindle.unitShown ?? worksUnit);
  return (
    <tr aria-rowindex={index}>
      <td className="verdict-cell">
        {verdict === undefined ? (
          <span className="soft">{verdictWords.never}</span>
        ) : (
          <VerdictWord verdict={verdict} size="medium" />
        )}
        {row.stopped && verdict !== "stop" && <small>{words.stopStands}</small>}
      </td>
      <th scope="row">
        <a className="whole" href={hrefOf({ place: "spindle", spindleId: spindle.spindleId })}>
          {spindle.name}
        </a>
        <small>{[spindle.taper, spindle.area].filter((part) => part !== "").join(" · ")}</small>
      </th>
      <td className="spark-cell">
        <Spark row={row} />
      </td>
      <td className="num last-cell">
        {last?.valueN !== undefined && (
          <>
            <b>{speech.forceWithin(last.valueN, last.expandedN, unit)}</b>
            <small>{words.on(speech.date(last.measuredAtMs))}</small>
          </>
        )}
      </td>
      <td className="why-cell">
        {whyWords(row, speech, unit)}
        {moves.map((move) => (
          <small key={move.id} className="moved">
            {words.movedWith(tools[move.by](move.id) ?? "?")}
          </small>
        ))}
        {standsOut !== undefined && <small>{standsOut}</small>}
        {place?.risk !== undefined && place.risk >= WORTH_SAYING && (
          <small>{words.risk(speech.percent(place.risk))}</small>
        )}
      </td>
      <td className="when-cell">
        {place !== undefined && last !== undefined && <WhenBar forecast={place.forecast} />}
      </td>
    </tr>
  );
}
