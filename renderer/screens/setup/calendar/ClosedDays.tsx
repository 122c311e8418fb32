import type { WorksCalendar } from "../../../../app/round/due/WorksCalendar.ts";
import { Button } from "../../../ui/Button.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { calendarTexts } from "./calendarTexts.ts";

/** Holidays and shut-downs, each to be taken away again. */
export function ClosedDays({
  calendar,
  onCalendar,
}: {
  readonly calendar: WorksCalendar;
  readonly onCalendar: (calendar: WorksCalendar) => void;
}) {
  const speech = useSpeech();
  const words = useWords(calendarTexts);
  const { closed } = calendar;
  if (closed.length === 0) return <p className="soft">{words.noneClosed}</p>;
  const said = ({ from, to }: (typeof closed)[number]) =>
    from === to ? speech.plainDate(from) : words.span(speech.plainDate(from), speech.plainDate(to));
  return (
    <ul className="plain-list">
      {closed.map((span) => (
        <li key={`${span.from} ${span.to}`} className="row">
          <span>{said(span)}</span>
          <Button
            kind="quiet"
            aria-label={`${words.remove}: ${said(span)}`}
            onClick={() => onCalendar({ ...calendar, closed: closed.filter((one) => one !== span) })}
          >
            {words.remove}
          </Button>
        </li>
      ))}
    </ul>
  );
}
