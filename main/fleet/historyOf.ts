import { combine } from "../../app/correction/combine.ts";
import type { Check } from "../../app/ledger/check.ts";
import type { ServiceEvent } from "../../app/ledger/register.ts";
import type { CheckPoint, History, ServiceMark } from "../../app/trend/History.ts";
import type { Limits } from "../../app/verdict/Judgement.ts";
import type { HistoryRow } from "../store/records/histories.ts";

/** A spindle's history as the trend room takes it, from rows alone: enough for ranking all spindles. */
export function historyOf(
  spindleId: string,
  limits: Limits,
  rows: readonly HistoryRow[],
  events: readonly ServiceEvent[],
): History {
  return { spindleId, limits, points: rows.map(pointOf), events: events.map(markOf) };
}

function pointOf({ measuredAtMs, spindleId: _spindle, ...row }: HistoryRow): CheckPoint {
  return { ...row, atMs: measuredAtMs };
}

function markOf({ eventId, at, kind, newBaseline }: ServiceEvent): ServiceMark {
  return { eventId, kind, newBaseline, atMs: Date.parse(at) };
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
    creep: creeps.length === 0 ? undefined : creeps.reduce((sum, c) => sum + c, 0) / creeps.length,
    notReleased: check.cycles.some((c) => c.dropped === null && c.flags.includes("notReleased")),
    limits: check.limits,
    commonUncertaintyN: shared.some((c) => c.standardN > 0) ? combine(shared).standardN : undefined,
  };
}
