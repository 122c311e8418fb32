import ical, { ICalCalendarMethod, ICalEventStatus, ICalEventTransparency } from "ical-generator";
import type { DueItem } from "../../app/round/due/DueFacts.ts";
import type { SpindleStanding } from "../store/records/spindles.ts";
import { dueReasonWords } from "./round/dueReasonWords.ts";

export type DueCalendarOptions = {
  readonly worksName: string;
  readonly worksId: string;
  readonly language: "en" | "de";
  /** When the records were last written: the same records give the same file, later ones a higher sequence. */
  readonly stampMs: number;
};

const words = {
  en: { title: "Clamping forces due", measure: "Measure clamping force", taper: "Taper", why: "Why" },
  de: { title: "Spannkräfte fällig", measure: "Spannkraft messen", taper: "Kegel", why: "Grund" },
} as const;

/** Sequence numbers count seconds from here: 32 bits of them last until 2088. */
const SEQUENCE_START_MS = Date.parse("2020-01-01T00:00:00Z");

/**
 * Due dates as an iCalendar file: one all-day event a spindle, known by the spindle for ever, so that a calendar that takes
 * in a later file moves its events instead of doubling them; a spindle that is retired has its event cancelled.
 * @see RFC 5545, 3.8.4.7 (UID), 3.8.7.4 (SEQUENCE), 3.8.1.11 (STATUS)
 */
export function dueCalendar(
  rows: readonly DueItem[],
  spindles: readonly SpindleStanding[],
  { worksName, worksId, language, stampMs }: DueCalendarOptions,
): string {
  const text = words[language];
  const calendar = ical({
    name: `${text.title}, ${worksName}`,
    prodId: { company: "Holdfast", product: "Clamping forces", language: language.toUpperCase() },
    method: ICalCalendarMethod.PUBLISH,
  });
  const due = new Map(rows.map((row) => [row.spindleId, row]));
  const sequence = Math.max(0, Math.floor((stampMs - SEQUENCE_START_MS) / 1000));
  for (const { spindle, last } of spindles) {
    const row = due.get(spindle.spindleId);
    const retired = spindle.state !== "inUse";
    const on = row?.dueOn ?? (last && new Date(last.measuredAtMs).toISOString().slice(0, 10));
    if (on === undefined || (row === undefined && !retired)) continue;
    const reasons = row === undefined ? [] : [row.why, ...row.also].map((why) => dueReasonWords[language][why]);
    calendar.createEvent({
      id: `spindle-${spindle.spindleId}@${worksId}.holdfast.invalid`,
      sequence,
      stamp: new Date(stampMs),
      start: dayAt(on, 0),
      end: dayAt(on, 1),
      allDay: true,
      summary: `${text.measure}: ${spindle.name}`,
      location: [spindle.area, spindle.machine].filter((part) => part !== "").join(", "),
      description: [`${text.taper}: ${spindle.taper}`, ...reasons.map((why) => `${text.why}: ${why}`)].join("\n"),
      status: retired ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
      transparency: ICalEventTransparency.TRANSPARENT,
    });
  }
  return calendar.toString();
}

/** A plain date as the generator takes it: it writes the parts of this computer's own time zone. */
function dayAt(date: string, later: number): Date {
  const [year, month, day] = date.split("-").map(Number) as [number, number, number];
  return new Date(year, month - 1, day + later);
}
