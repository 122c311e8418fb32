import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import type { DueView } from "../../../app/contract/roundViews.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { Button } from "../../ui/Button.tsx";
import { VerdictWord } from "../../ui/verdict/VerdictWord.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { weekdayName } from "../setup/calendar/weekdayName.ts";
import { roundsTexts } from "./texts.ts";

const SPANS = [0, 14, 31] as const;

/** Spindles by the day they are due, overdue first, each with what made it due; ticked ones go on the round. */
export function DueTable({
  due,
  spindles,
  ticked,
  onTicked,
}: {
  readonly due: DueView;
  readonly spindles: readonly SpindleRow[];
  readonly ticked: ReadonlySet<string>;
  readonly onTicked: (ticked: ReadonlySet<string>) => void;
}) {
  const speech = useSpeech();
  const words = useWords(roundsTexts);
  const rowOf = new Map(spindles.map((row) => [row.spindle.spindleId, row]));
  const tick = (spindleId: string, on: boolean) => {
    const next = new Set(ticked);
    if (on) next.add(spindleId);
    else next.delete(spindleId);
    onTicked(next);
  };
  const tickWithin = (days: number) =>
    onTicked(new Set(due.rows.filter((row) => row.overdueDays >= -days).map((row) => row.spindleId)));
  return (
    <>
      <div className="row act-line">
        <span className="soft">{words.tickDue}</span>
        {SPANS.map((days) => (
          <Button key={days} onClick={() => tickWithin(days)}>
            {days === 0 ? words.today : words.days(days)}
          </Button>
        ))}
      </div>
      <p className="small soft">
        {words.openOn(speech.list(due.calendar.weekdays.map((day) => weekdayName(day, speech.locale))))}{" "}
        {due.calendar.closed.length > 0 && words.closures(due.calendar.closed.length)}{" "}
        <a href={hrefOf({ place: "setup" })}>{words.toCalendar}</a>
      </p>
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.spindle}</th>
              <th scope="col">{words.taper}</th>
              <th scope="col">{words.dueOn}</th>
              <th scope="col">{words.reason}</th>
            </tr>
          </thead>
          <tbody>
            {due.rows.map((row) => {
              const known = rowOf.get(row.spindleId);
              if (known === undefined) return null;
              const { name, area, taper } = known.spindle;
              return (
                <tr key={row.spindleId}>
                  <th scope="row">
                    <label className="tick">
                      <input
                        type="checkbox"
                        checked={ticked.has(row.spindleId)}
                        onChange={(e) => tick(row.spindleId, e.target.checked)}
                      />
                      <span>
                        {name} <small>{area}</small>
                      </span>
                    </label>
                  </th>
                  <td>{taper}</td>
                  <td>
                    {speech.plainDate(row.dueOn)}
                    {row.overdueDays > 0 && <small className="late">{words.overdue(row.overdueDays)}</small>}
                    {row.overdueDays === 0 && <small>{words.dueNow}</small>}
                  </td>
                  <td>
                    {known.verdict !== undefined && known.verdict !== "good" && <VerdictWord verdict={known.verdict} />}
                    <small>{[row.why, ...row.also].map((why) => words[`why.${why}`]).join(", ")}</small>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </>
  );
}
