import { useEffect, useState } from "react";
import type { WorksCalendar } from "../../../../app/round/due/WorksCalendar.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { DateField } from "../../../ui/field/DateField.tsx";
import { Tick } from "../../../ui/field/Tick.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { isPlainDate } from "../../../words/plainDates.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { ClosedDays } from "./ClosedDays.tsx";
import { calendarTexts } from "./calendarTexts.ts";
import { weekdayName } from "./weekdayName.ts";

const WEEK = [1, 2, 3, 4, 5, 6, 7] as const;

/** On which days the works are open: a check that falls due on another day is due on the last working day before it. */
export function CalendarSection() {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(calendarTexts);
  const common = useWords(commonTexts);
  const [calendar, setCalendar] = useState<WorksCalendar>();
  const [from, setFrom] = useState("");
  const [to, setTo] = useState("");
  const [wrong, setWrong] = useState(false);
  const [saved, setSaved] = useState(false);
  useEffect(() => {
    report(core.client.call("rounds.getCalendar", {})).then((found) => found !== undefined && setCalendar(found));
  }, [core, report]);
  if (calendar === undefined) return null;
  const set = (next: WorksCalendar) => {
    setCalendar(next);
    setSaved(false);
  };
  const tick = (day: number, on: boolean) =>
    set({ ...calendar, weekdays: WEEK.filter((one) => (one === day ? on : calendar.weekdays.includes(one))) });
  const add = () => {
    const last = to === "" ? from : to;
    const isSpan = isPlainDate(from) && isPlainDate(last) && from <= last;
    setWrong(!isSpan);
    if (!isSpan) return;
    const closed = [...calendar.closed, { from, to: last }].sort((a, b) => (a.from < b.from ? -1 : 1));
    set({ ...calendar, closed });
    setFrom("");
    setTo("");
  };
  const save = async () => {
    const kept = await report(core.client.call("rounds.saveCalendar", plain(calendar)));
    if (kept !== undefined) setSaved(true);
  };
  return (
    <section className="sheet form" aria-labelledby="calendar-title">
      <h2 id="calendar-title">{words.title}</h2>
      <p className="small soft">{words.why}</p>
      <fieldset className="group">
        <legend>{words.weekdays}</legend>
        <div className="row">
          {WEEK.map((day) => (
            <Tick key={day} checked={calendar.weekdays.includes(day)} onTick={(on) => tick(day, on)}>
              {weekdayName(day, speech.locale)}
            </Tick>
          ))}
        </div>
        {calendar.weekdays.length === 0 && <p role="alert">{words.noDay}</p>}
      </fieldset>
      <ClosedDays calendar={calendar} onCalendar={set} />
      <div className="fields">
        <DateField label={words.from} value={from} onText={setFrom} error={wrong ? words.wrongSpan : undefined} />
        <DateField label={words.to} hint={words.toHint} value={to} onText={setTo} />
      </div>
      <div className="row">
        <Button icon="add" onClick={add}>
          {words.add}
        </Button>
        <Button kind="main" disabled={calendar.weekdays.length === 0} onClick={save}>
          {common.save}
        </Button>
        <span role="status">{saved ? words.saved : ""}</span>
      </div>
    </section>
  );
}

/** Lists of its own, as the call wants them. */
const plain = ({ weekdays, closed }: WorksCalendar) => ({
  weekdays: [...weekdays],
  closed: closed.map((span) => ({ ...span })),
});
