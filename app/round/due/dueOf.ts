import type { DueFacts, DueItem, DueReason } from "./DueFacts.ts";
import { dateOf, daysOf } from "./plainDays.ts";
import type { WorksCalendar } from "./WorksCalendar.ts";
import { workingDay } from "./workingDay.ts";

/** Days after a check of this verdict; common practice, no source. A watched spindle comes at half its interval. */
const AFTER = { act: 14, cannotTell: 7 } as const;
const WATCH_SHARE = 0.5;
/** Measure when two thirds of the way to the earliest day a limit may be reached are gone (common practice, no source). */
const FORECAST_SHARE = 2 / 3;

/** Equal dates go by this order: what presses more is named first. */
const pressing: readonly DueReason[] = [
  "stopped",
  "afterCrash",
  "act",
  "remeasure",
  "afterService",
  "cannotTell",
  "neverMeasured",
  "watch",
  "toolChanges",
  "forecast",
  "interval",
];

type Cause = { readonly why: DueReason; readonly on: number };

/**
 * When one spindle is to be measured next, and why: the earliest of its interval in days, its interval in tool changes,
 * what the last verdict asks for, work or a crash since, and two thirds of the way to where the forecast's interval
 * first meets a limit. A closed day moves it forward to the last open day before, never past it.
 * @param today  plain date; a spindle that is due before it is overdue, and keeps its day
 * @throws RangeError  a date that is none
 */
export function dueOf(facts: DueFacts, calendar: WorksCalendar, today: string): DueItem {
  const now = daysOf(today);
  const causes = causesOf(facts, now);
  causes.sort((a, b) => a.on - b.on || pressing.indexOf(a.why) - pressing.indexOf(b.why));
  const first = causes[0]!; // an interval or "never measured" is always there
  const plain = dateOf(first.on);
  const dueOn = plain < today ? plain : workingDay(plain, calendar, today);
  const interval = causes.find((c) => c.why === "interval")?.on ?? Number.POSITIVE_INFINITY;
  const also = causes.slice(1).filter((c) => c.on <= Math.max(first.on, now) || c.on < interval);
  return {
    spindleId: facts.spindleId,
    dueOn,
    why: first.why,
    also: also.map((c) => c.why),
    overdueDays: now - daysOf(dueOn),
  };
}

function causesOf(facts: DueFacts, now: number): Cause[] {
  const { last, event, stopped, intervalDays, limitFrom } = facts;
  const causes: Cause[] = [];
  const add = (why: DueReason, on: number) => causes.push({ why, on });
  if (stopped) add("stopped", now);
  if (event !== undefined) add(event.kind === "crash" ? "afterCrash" : "afterService", daysOf(event.on));
  if (last === undefined) {
    add("neverMeasured", now);
    return causes;
  }
  const since = daysOf(last.on);
  add("interval", since + intervalDays);
  if (last.remeasure) add("remeasure", now);
  if (last.verdict === "act") add("act", since + Math.min(AFTER.act, intervalDays));
  if (last.verdict === "cannotTell") add("cannotTell", since + Math.min(AFTER.cannotTell, intervalDays));
  if (last.verdict === "watch") add("watch", since + Math.ceil(WATCH_SHARE * intervalDays));
  if (limitFrom !== undefined) {
    const away = Math.max(0, daysOf(limitFrom) - since);
    add("forecast", since + Math.floor(FORECAST_SHARE * away));
  }
  const changes = toolChangesOn(facts);
  if (changes !== undefined) add("toolChanges", changes);
  return causes;
}

/** The day the tool changes since the last check come to the interval; undefined where counter or pace is unknown. */
function toolChangesOn({ last, intervalToolChanges, changesPerDay, counterSince }: DueFacts): number | undefined {
  if (last?.counter === undefined || intervalToolChanges === undefined) return undefined;
  const known = counterSince ?? { on: last.on, counter: last.counter };
  const beganAnew = known.counter < last.counter; // a control was exchanged: what it shows since is the least that was made
  const left = intervalToolChanges - (beganAnew ? known.counter : known.counter - last.counter);
  if (left <= 0) return daysOf(known.on);
  if (changesPerDay === undefined || !(changesPerDay > 0)) return undefined;
  const due = daysOf(known.on) + Math.floor(left / changesPerDay);
  return beganAnew ? Math.min(due, daysOf(last.on) + Math.floor(intervalToolChanges / changesPerDay)) : due;
}
