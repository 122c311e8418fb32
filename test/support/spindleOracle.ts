import type { Check } from "../../app/ledger/check.ts";
import type { ServiceEvent } from "../../app/ledger/register.ts";
import type { EntryDraft } from "../../main/store/Store.ts";

type Filed = { check: Check; order: number; valid: boolean };

/**
 * What a spindle's standing must be, worked out from everything that was filed, by the plainest means: every list is
 * gone through whole. Slow, and shares no line with the store.
 */
export function standingByHand(drafts: readonly EntryDraft[], spindleId: string) {
  const checks: Filed[] = [];
  const services = new Map<string, { event: ServiceEvent; order: number }>();
  const choices: { checkId: string; order: number }[] = [];
  let released = -1;
  drafts.forEach((draft, order) => {
    if (draft.kind === "check") checks.push({ check: draft.body as Check, order, valid: true });
    if (draft.kind === "void" || draft.kind === "replacement") {
      for (const filed of checks) if (filed.check.checkId === draft.body.checkId) filed.valid = false;
    }
    if (draft.kind === "replacement") checks.push({ check: draft.body.by as Check, order, valid: true });
    if (draft.kind === "serviceEvent") {
      const event = draft.body as ServiceEvent;
      services.set(event.eventId, { event, order: services.get(event.eventId)?.order ?? order });
    }
    if (draft.kind === "baselineChoice" && draft.body.spindleId === spindleId) {
      const named = checks.find((c) => c.check.checkId === draft.body.checkId);
      if (named?.check.spindleId === spindleId) choices.push({ checkId: draft.body.checkId, order });
    }
    if (draft.kind === "stopRelease" && draft.body.spindleId === spindleId) released = order;
  });

  const mine = checks
    .filter(({ check, valid }) => valid && check.spindleId === spindleId)
    .sort((a, b) => Date.parse(a.check.measuredAt) - Date.parse(b.check.measuredAt) || a.order - b.order);
  const valued = mine.filter(({ check }) => check.valueN !== null);
  const service = [...services.values()]
    .filter(({ event }) => event.spindleId === spindleId && event.newBaseline)
    .sort((a, b) => (a.event.at < b.event.at ? -1 : a.event.at > b.event.at ? 1 : a.order - b.order))
    .at(-1);
  const after = (filed: Filed) => service === undefined || isAfter(filed, service);
  const choice = choices.findLast(({ checkId }) => valued.some(({ check }) => check.checkId === checkId));
  const chosen = choice && valued.find(({ check }) => check.checkId === choice.checkId);
  const choiceHolds = chosen !== undefined && (service === undefined || choice!.order > service.order || after(chosen));
  const stops = mine.filter(
    (filed) => filed.check.verdict === "stop" && filed.order > released && !isHistory(filed, mine),
  );
  return {
    checkCount: mine.length,
    last: mine.at(-1)?.check.checkId,
    baseline: (choiceHolds ? chosen : valued.find(after))?.check.checkId,
    stop: stops.sort((a, b) => a.order - b.order)[0]?.check.checkId,
    recent: valued.slice(-24).map(({ check }) => Math.round(check.valueN! * 10) / 10),
  };
}

/** An old stop that another old check, or one that was here before it, has gone past. */
function isHistory({ check, order }: Filed, mine: readonly Filed[]): boolean {
  if (check.source !== "imported") return false;
  return mine.some((other) => {
    const later = Date.parse(other.check.measuredAt) > Date.parse(check.measuredAt);
    const known = other.check.source === "imported" || other.order < order;
    return later && known && other.check.verdict !== "stop";
  });
}

function isAfter({ check, order }: Filed, service: { event: ServiceEvent; order: number }): boolean {
  const day = new Date(Date.parse(check.measuredAt) + check.offsetMinutes * 60_000).toISOString().slice(0, 10);
  if (day !== service.event.at) return day > service.event.at;
  if (check.reason === "afterService") return true;
  return check.reason !== "beforeService" && order > service.order;
}
