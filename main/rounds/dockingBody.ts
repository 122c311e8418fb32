import type { Parsed } from "../../app/contract/methods.ts";
import type { Check } from "../../app/ledger/check.ts";
import type { Docking } from "../../app/ledger/round.ts";
import type { DockingWork } from "./DockingWork.ts";

/** A docking as it is filed: every reading of it with the check it went into, or why it went into none. */
export function dockingBody(input: Parsed<"docking.accept">, work: DockingWork, checks: readonly Check[]): Docking {
  const { request, clock } = work;
  const filedBy = new Map(
    input.filings.flatMap((f, i) => f.takes.map((at) => [at, { checkId: checks[i]!.checkId, factor: f.factor }])),
  );
  const why = new Map(input.leftOut.map((l) => [l.take, l.why]));
  return {
    dockingId: request.dockingId,
    roundId: request.roundId ?? null,
    gaugeId: request.gaugeId ?? null,
    operatorId: input.operatorId ?? null,
    formatId: request.formatId ?? null,
    source: request.source,
    fileName: request.fileName ?? null,
    clock:
      clock === undefined || clock.assumed
        ? null
        : {
            gaugeMs: Math.round(clock.seen.gaugeMs),
            pcMs: Math.round(clock.seen.pcMs),
            driftPpm: clock.driftPpm ?? null,
            setSince: clock.setSince,
          },
    records: work.records.map((r, i) => {
      const at = work.atMs[i];
      return {
        number: r.number ?? null,
        raw: r.raw,
        figure: r.figure.slice(0, 80),
        valueN: r.valueN ?? null,
        unit: r.unit ?? null,
        stamp: r.stamp?.slice(0, 60) ?? null,
        at: at === undefined ? null : new Date(at).toISOString(),
        location: r.location?.slice(0, 80) ?? null,
        kind: r.kind ?? null,
        checkId: filedBy.get(i)?.checkId ?? null,
        factor: filedBy.get(i)?.factor ?? 1,
        leftOut: why.get(i) ?? null,
      };
    }),
    answers: input.answers,
  };
}
