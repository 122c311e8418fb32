import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Check } from "../../app/ledger/check.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Docking, Round } from "../../app/ledger/round.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { EntryDraft, Store } from "../store/Store.ts";
import { checkOfTakes } from "./checkOfTakes.ts";
import type { DockingWork } from "./DockingWork.ts";
import { readDocking } from "./readDocking.ts";
import { readRound } from "./roundRecords.ts";
import { worksDay } from "./worksDay.ts";

export type AcceptDeps = {
  readonly store: Store;
  readonly works: Works;
  readonly nowMs: number;
  readonly version: string;
};

type Input = Parsed<"docking.accept">;

/**
 * Files a docking: its checks, the docking with every reading of it, and the round as done when nothing of it is left, in one
 * transaction with one disk sync. Nothing stands when anything of it is refused.
 * @throws AppError  `conflict` when readings were docked, a spindle retired or the round ended meanwhile; `refused` or `invalid` with
 *   what stands in the way
 */
export function acceptDocking(input: Input, work: DockingWork, deps: AcceptDeps): readonly Check[] {
  const { store } = deps;
  if (store.refusal !== undefined) throw new AppError("readOnly", store.refusal.message, { key: "readOnly" });
  const round = roundOf(work, deps);
  refuseUnlessWhole(input, work);
  refuseIfDockedMeanwhile(work, deps);
  const doubtful = clockBehind(input, deps);
  const checks = input.filings.map((filing): Check => {
    const records = filing.takes.map((at) => work.records[at]!);
    const spindle = readSpindle(store.db, filing.spindleId)?.spindle;
    if (spindle === undefined || spindle.state !== "inUse")
      throw new AppError(
        "conflict",
        `${spindle?.name ?? "A spindle"} has been retired meanwhile. Leave its readings out, or put it in use again. Nothing was filed.`,
        { key: "stopRetired" },
      );
    if (records.some((r) => r.valueN === undefined))
      throw new AppError("invalid", "A reading without a force cannot be filed. Leave it out.", {
        key: "takeWithoutForce",
      });
    return checkOfTakes(store.db, deps.works, {
      checkId: store.newId(),
      tag: {
        spindleId: filing.spindleId,
        adapterId: filing.adapterId,
        gaugeId: work.request.gaugeId,
        operatorId: input.operatorId,
      },
      records,
      factor: filing.factor,
      measuredAtMs: work.atMs[filing.takes[0]!] ?? work.request.pcMs,
      roundId: work.request.roundId,
      reasons: input.reasons ?? {},
      programVersion: deps.version,
      clockDoubtful: doubtful || work.clock?.assumed === true,
    });
  });
  const done = round === undefined ? [] : closing(round, checks, deps);
  store.append([
    ...checks.map((body): EntryDraft => ({ kind: "check", body })),
    { kind: "docking", body: dockingBody(input, work, checks) },
    ...done,
  ]);
  return checks;
}

function roundOf({ request }: DockingWork, { store }: AcceptDeps): Round | undefined {
  if (request.roundId === undefined) return undefined;
  const round = readRound(store.db, request.roundId);
  if (round?.state === "cancelled")
    throw new AppError(
      "conflict",
      "This round was cancelled meanwhile. Dock without a round, or open it again. Nothing was filed.",
      { key: "roundEnded" },
    );
  return round;
}

/** Every reading is either filed once or left out with a reason; none is forgotten. */
function refuseUnlessWhole(input: Input, { records }: DockingWork): void {
  const uses = new Int32Array(records.length);
  const all = [...input.filings.flatMap((f) => f.takes), ...input.leftOut.map((l) => l.take)];
  for (const at of all) if (at < uses.length) uses[at]! += 1;
  if (all.some((at) => at >= records.length) || uses.some((n) => n !== 1))
    throw new AppError(
      "invalid",
      "Each reading is to be filed once or left out. Look at what is left, and accept again.",
      { key: "takesNotWhole" },
    );
  const spindles = input.filings.map((f) => f.spindleId);
  if (new Set(spindles).size !== spindles.length)
    throw new AppError("invalid", "A spindle has two groups of readings. Put them together, or leave one out.", {
      key: "spindleTwice",
    });
}

/** Somebody may have docked the same memory on another page: it is looked at once more, by what stands in the ledger now. */
function refuseIfDockedMeanwhile(work: DockingWork, { store, works, nowMs }: AcceptDeps): void {
  if (work.request.typed !== undefined) return;
  const again = readDocking(work.request, { db: store.db, works, nowMs });
  if (again.records.length !== work.records.length)
    throw new AppError(
      "conflict",
      "Readings of this memory were filed meanwhile on another page. Look again: only what is new is shown. Nothing was filed twice.",
      { key: "dockedMeanwhile" },
    );
}

function clockBehind(input: Input, { store, nowMs }: AcceptDeps): boolean {
  const last = store.lastEntryAtMs();
  const behind = last !== undefined && nowMs < last;
  if (behind && input.clockConfirmed !== true)
    throw new AppError(
      "refused",
      "The clock of this PC stands before the last entry in the records. Set it right, or say that it is right and accept again.",
      { key: "clockBehind" },
    );
  return behind;
}

/** The round is done when each of its spindles has a check of its day or later, these among them. */
function closing(round: Round, checks: readonly Check[], { store, works }: AcceptDeps): EntryDraft[] {
  const filed = new Set(checks.map((c) => c.spindleId));
  const open = round.stops.some(({ spindleId }) => {
    const standing = readSpindle(store.db, spindleId);
    if (filed.has(spindleId) || standing === undefined || standing.spindle.state !== "inUse") return false;
    return standing.last === undefined || worksDay(standing.last.measuredAtMs, works.timeZone) < round.on;
  });
  return open || round.state === "done" ? [] : [{ kind: "round", body: { ...round, state: "done" } }];
}

function dockingBody(input: Input, work: DockingWork, checks: readonly Check[]): Docking {
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
