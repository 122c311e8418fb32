import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Check } from "../../app/ledger/check.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Round } from "../../app/ledger/round.ts";
import type { Db } from "../store/db.ts";
import { checkSummary } from "../store/records/checks.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { EntryDraft, Store } from "../store/Store.ts";
import { checkOfTakes } from "./checkOfTakes.ts";
import type { DockingWork } from "./DockingWork.ts";
import { dockingBody } from "./dockingBody.ts";
import { isSettled } from "./isSettled.ts";
import { refuseIfDockedMeanwhile, refuseUnlessWhole } from "./refuseDocking.ts";
import { entriesAfter, readDocking, readRound } from "./roundRecords.ts";
import { refuseIfChanged } from "./roundVersion.ts";

export type AcceptDeps = {
  readonly store: Store;
  readonly works: Works;
  readonly nowMs: number;
  readonly version: string;
};

type Input = Parsed<"docking.accept">;

export type FiledDocking = {
  readonly checks: readonly { readonly checkId: string; readonly spindleId: string }[];
  readonly roundId: string | undefined;
  /** It had been filed before: nothing was added. */
  readonly again: boolean;
};

/** Something was filed while this was put together: it is to be looked at once more. */
export class Overtaken extends Error {
  override name = "Overtaken";
}

/**
 * Files a docking: its checks, the docking with every reading of it, and the round as done when nothing of it is left, in one
 * transaction with one disk sync. Nothing stands when anything of it is refused.
 * @throws Overtaken  another connection has filed meanwhile; nothing of this stands, and it can be tried again
 * @throws AppError  `conflict` when readings were docked, a spindle retired or the round ended meanwhile; `refused` or `invalid` with
 *   what stands in the way
 */
export function acceptDocking(input: Input, work: DockingWork, deps: AcceptDeps): FiledDocking {
  const { store } = deps;
  if (store.refusal !== undefined) throw new AppError("readOnly", store.refusal.message, { key: "readOnly" });
  const place = store.lastPlace();
  const before = filedBefore(store.db, input.dockingId);
  if (before !== undefined) return before;
  const round = roundOf(work, deps);
  refuseUnlessWhole(input, work);
  refuseIfDockedMeanwhile(input, work, deps);
  if (round !== undefined) refuseIfChanged(round, work.roundVersion);
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
      typedIn: work.request.typed !== undefined,
      measuredAtMs: work.atMs[filing.takes[0]!] ?? work.request.pcMs,
      roundId: work.request.roundId,
      reasons: input.reasons ?? {},
      programVersion: deps.version,
      clockDoubtful: doubtful || work.clock?.assumed === true || records.some((r) => r.badDate),
    });
  });
  const done = round === undefined ? [] : closing(round, checks, deps);
  const drafts: EntryDraft[] = [
    ...checks.map((body): EntryDraft => ({ kind: "check", body })),
    { kind: "docking", body: dockingBody(input, work, checks) },
    ...done,
  ];
  store.append(drafts, {
    alsoInTransaction: () => {
      if (entriesAfter(store.db, place) !== drafts.length) throw new Overtaken("filed meanwhile");
    },
  });
  return filedAs(checks, work.request.roundId, false);
}

/** The checks of a docking that was filed already; undefined: it was not. */
export function filedBefore(db: Db, dockingId: string): FiledDocking | undefined {
  const docking = readDocking(db, dockingId);
  if (docking === undefined) return undefined;
  const checkIds = new Set(docking.records.flatMap((r) => r.checkId ?? []));
  const checks = [...checkIds].flatMap((checkId) => checkSummary(db, checkId) ?? []);
  return filedAs(checks, docking.roundId ?? undefined, true);
}

const filedAs = (checks: FiledDocking["checks"], roundId: string | undefined, again: boolean): FiledDocking => ({
  checks: checks.map(({ checkId, spindleId }) => ({ checkId, spindleId })),
  roundId,
  again,
});

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

/** The round is done when nothing of it is left, with what is being filed. */
function closing(round: Round, checks: readonly Check[], { store, works }: AcceptDeps): EntryDraft[] {
  const filed = new Set(checks.map((c) => c.spindleId));
  const over = round.state === "open" && isSettled(store.db, round, works, filed);
  return over ? [{ kind: "round", body: { ...round, state: "done" } }] : [];
}
