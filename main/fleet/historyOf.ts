import { combine } from "../../app/correction/combine.ts";
import type { Check } from "../../app/ledger/check.ts";
import type { ServiceEvent } from "../../app/ledger/register.ts";
import type { CheckPoint, CoursePoint, History, ServiceMark } from "../../app/trend/History.ts";
import type { Limits } from "../../app/verdict/Judgement.ts";
import { dayStart } from "../store/dateIn.ts";

/**
 * A spindle's history as the trend room takes it.
 * @param timeZone  the works', in which the day of a service begins; undefined: no works yet, UTC
 */
export function historyOf<P extends CoursePoint>(
  spindleId: string,
  limits: Limits,
  points: readonly P[],
  events: readonly ServiceEvent[],
  timeZone: string | undefined,
): History<P> {
  return { spindleId, limits, points, events: events.map((event) => markOf(event, timeZone)) };
}

/** An event as a mark in the course: from the start of its day in the works' time zone. */
export function markOf({ eventId, at, kind, newBaseline }: ServiceEvent, timeZone: string | undefined): ServiceMark {
  return { eventId, kind, newBaseline, atMs: dayStart(timeZone, at) };
}

/** What only the whole check tells: scatter inside it, creep, counter, the uncertainty that all checks share. */
export function detailOf(check: Check): Partial<CheckPoint> {
  const creeps = check.cycles.flatMap((c) => (c.dropped === null && c.creep !== null ? [c.creep] : []));
  const shared = (check.budget?.contributions ?? [])
    .filter((c) => c.source === "gaugeProof" || c.source === "adapter")
    .map((c) => ({ ...c, degreesOfFreedom: c.degreesOfFreedom ?? Number.POSITIVE_INFINITY }));
  return {
    counter: check.counter ?? undefined,
    seriesSN: check.series.sN ?? undefined,
    seriesCount: check.series.n,
    creep: creeps.length === 0 ? undefined : creeps.reduce((sum, c) => sum + c, 0) / creeps.length,
    notReleased: check.cycles.some((c) => c.dropped === null && c.flags.includes("notReleased")),
    limits: check.limits,
    commonUncertaintyN: shared.some((c) => c.standardN > 0) ? combine(shared).standardN : undefined,
  };
}
