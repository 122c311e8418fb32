import { AppError } from "../../app/contract/result.ts";
import type { DockingWarning, StopView } from "../../app/contract/roundViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Docking } from "../../app/ledger/round.ts";
import type { DumpFormat } from "../../app/round/dump/DumpFormat.ts";
import type { DumpRecord } from "../../app/round/dump/DumpReading.ts";
import { learnDump } from "../../app/round/dump/learnDump.ts";
import { readDump } from "../../app/round/dump/readDump.ts";
import type { MatchStop } from "../../app/round/match/MatchStop.ts";
import { matchRound } from "../../app/round/match/matchRound.ts";
import type { RoundMatch } from "../../app/round/match/RoundMatch.ts";
import { freshRecords, type StoredReading } from "../../app/round/memory/freshRecords.ts";
import type { Take } from "../../app/round/take/Take.ts";
import { warningsBefore } from "../bench/warningsBefore.ts";
import type { Db } from "../store/db.ts";
import { adapterList } from "../store/records/adapters.ts";
import { readSpindle, spindleList } from "../store/records/spindles.ts";
import { adapterFor } from "./adapterFor.ts";
import { clockOfDocking } from "./clockOfDocking.ts";
import type { DockingRequest, DockingWork } from "./DockingWork.ts";
import { expected } from "./expected.ts";
import { filingFacts } from "./filingFacts.ts";
import { dockingCount, dockingsOf, readDumpFormat, readRound } from "./roundRecords.ts";
import { roundVersion } from "./roundVersion.ts";
import { toStopView } from "./toRoundView.ts";
import { worksDayBegins } from "./worksDayBegins.ts";

export type DockingDeps = {
  readonly db: Db;
  readonly works: Works;
  readonly nowMs: number;
  /** Called between steps; the second one throws when it is to end. */
  readonly progress: (done: number, total: number) => void;
  readonly goOn: () => void;
};

/** Read, known again, matched, looked at once more. */
const STEPS = 4;
const nothing: RoundMatch = { visits: [], questions: [], missing: [] };
/** The PC's clock may run a little behind the gauge's after all corrections. */
const SLACK_MS = 300_000;

/**
 * From text to a matched docking: the format stored or learned, the records, what of them is new, when they were taken, and
 * the spindles they belong to. Reads the records, files nothing.
 * @throws AppError  no such round or format
 * @throws what `goOn` throws
 */
export function readDocking(request: DockingRequest, deps: DockingDeps): DockingWork {
  const { db, works, goOn } = deps;
  const step = (done: number) => {
    goOn();
    deps.progress(done, STEPS);
  };
  step(0);
  const round = request.roundId === undefined ? undefined : readRound(db, request.roundId);
  const stops = stopsOf(request, deps);
  const stored = storedFormat(db, request.formatId);
  const learned =
    stored !== undefined || request.typed !== undefined ? undefined : learnDump(request.text, request.hints);
  const format = stored?.format ?? learned?.format;
  const base = {
    request,
    learned,
    format,
    formatName: stored?.name ?? (format && "learned"),
    stops,
    roundVersion: round && roundVersion(round),
  };
  const open = {
    reading: undefined,
    clock: undefined,
    records: [],
    atMs: [],
    known: 0,
    doubtful: false,
    warnings: [],
    memory: [],
    dockedBefore: 0,
  };
  step(1);
  if (request.typed === undefined && (format === undefined || (learned?.undecided.length ?? 0) > 0))
    return { ...base, ...open, match: { ...nothing, missing: [...stops.keys()] } };
  const reading = request.typed === undefined ? readDump(request.text, format!) : undefined; // an absent one has just returned
  const all: readonly DumpRecord[] = request.typed ?? reading?.records ?? [];
  step(2);
  const dockedBefore = dockingCount(db); // first: what is filed from here on is noticed when this is accepted
  const before = request.typed === undefined ? dockingsOf(db, request.gaugeId ?? null) : [];
  const times = clockOfDocking(all, request.gaugeNowMs ?? reading?.gaugeNowMs, request.pcMs, before);
  const inOrder = times.order.map((i) => all[i]!);
  const memory = inOrder.map(storedReading);
  const identity =
    request.typed === undefined && !request.allNew
      ? freshRecords(dockedReadings(before), memory)
      : { fresh: [...inOrder.keys()], known: 0, doubtful: false };
  const fresh = identity.fresh.map((k) => times.order[k]!).sort((a, b) => a - b);
  const position = new Map(fresh.map((i, k) => [i, k]));
  const records = fresh.map((i) => all[i]!);
  const atMs = fresh.map((i) => times.atMs[i]);
  const takes = records.map((record, k) => toTake(record, atMs[k], request, stops));
  const timed = round !== undefined && times.clock?.assumed === false;
  const match = matchRound(takes, matchStops(db, stops, request), {
    order: times.order.flatMap((i) => position.get(i) ?? []),
    clockPutBack: times.putBack.flatMap((i) => position.get(i) ?? []),
    ordered: round !== undefined,
    fromMs: timed ? worksDayBegins(round.on, works.timeZone) : undefined,
    toMs: timed ? request.pcMs + SLACK_MS : undefined,
    goOn,
  });
  step(3);
  const warnings = warningsOf(match, stops, request, db, works, deps.nowMs);
  const { known, doubtful } = identity;
  return {
    ...base,
    reading,
    clock: times.clock,
    records,
    atMs,
    known,
    doubtful,
    match,
    warnings,
    memory,
    dockedBefore,
  };
}

/** Every reading of earlier dockings, as it is known again. */
export const dockedReadings = (before: readonly Docking[]): StoredReading[] =>
  before.flatMap((d) => d.records.map(storedReading));

/** A reading as it is known again; what was filed has nulls where there was nothing. */
const storedReading = (r: {
  figure: string;
  stamp: string | null | undefined;
  location: string | null | undefined;
  kind: string | null | undefined;
}): StoredReading => ({
  figure: r.figure,
  stamp: r.stamp ?? undefined,
  location: r.location ?? undefined,
  kind: r.kind ?? undefined,
});

function storedFormat(
  db: Db,
  formatId: string | undefined,
): { readonly name: string; readonly format: DumpFormat } | undefined {
  if (formatId === undefined) return undefined;
  const found = readDumpFormat(db, formatId);
  if (found === undefined)
    throw new AppError("notFound", "There is no such way of reading a memory any more.", { key: "noDumpFormat" });
  return found;
}

/** The round's spindles in walking order, without those retired meanwhile; without a round all in use. */
function stopsOf({ roundId }: DockingRequest, { db, works }: DockingDeps): StopView[] {
  if (roundId === undefined) {
    const adapters = adapterList(db);
    const all = spindleList(db).filter(({ spindle }) => spindle.state === "inUse");
    all.sort((a, b) => (a.spindle.order ?? 1e9) - (b.spindle.order ?? 1e9));
    return all.map((standing) => {
      const adapterId = adapterFor(standing.spindle.taper, adapters)?.adapterId ?? null;
      const expectedN = expected(db, standing)?.forceN ?? null;
      return toStopView(standing, { adapterId, location: null, expectedN, passed: undefined }, undefined, works);
    });
  }
  const round = readRound(db, roundId);
  if (round === undefined)
    throw new AppError("notFound", "There is no such round in this data file.", { key: "noRound" });
  return round.stops.flatMap((stop) => {
    const standing = readSpindle(db, stop.spindleId);
    return standing === undefined || standing.spindle.state !== "inUse"
      ? []
      : [toStopView(standing, stop, round.on, works)];
  });
}

function matchStops(db: Db, stops: readonly StopView[], { typed, roundId }: DockingRequest): MatchStop[] {
  return stops.map((stop): MatchStop => {
    const place = roundId === undefined ? stop.name.toLocaleLowerCase() : stop.location;
    const standing = readSpindle(db, stop.spindleId);
    return {
      spindleId: stop.spindleId,
      location: typed === undefined ? place : stop.spindleId,
      expected: standing && expected(db, standing),
    };
  });
}

function toTake(
  record: DumpRecord & { readonly spindleId?: string },
  atMs: number | undefined,
  { typed, roundId }: DockingRequest,
  stops: readonly StopView[],
): Take {
  const { valueN, kind, refused } = record;
  return {
    valueN,
    atMs,
    kind,
    refused,
    location: typed === undefined ? placeOf(record.location, stops, roundId) : record.spindleId,
  };
}

/** A file may name the spindle or its machine instead of a number. */
function placeOf(
  text: string | undefined,
  stops: readonly StopView[],
  roundId: string | undefined,
): string | undefined {
  if (text === undefined) return undefined;
  const sought = text.toLocaleLowerCase();
  const named = stops.filter((s) => s.name.toLocaleLowerCase() === sought);
  const machines = stops.filter((s) => s.machine.toLocaleLowerCase() === sought);
  const [found] = named.length === 1 ? named : machines.length === 1 ? machines : [];
  if (found === undefined) return text;
  return roundId === undefined ? found.name.toLocaleLowerCase() : (found.location ?? text);
}

function warningsOf(
  match: RoundMatch,
  stops: readonly StopView[],
  { gaugeId }: DockingRequest,
  db: Db,
  works: Works,
  nowMs: number,
): DockingWarning[] {
  const found = new Map<string, DockingWarning>();
  for (const at of new Set(match.visits.flatMap((v) => v.stop ?? []))) {
    const { spindleId, adapterId } = stops[at]!;
    const { state, facts } = filingFacts(db, works, { spindleId, adapterId: adapterId ?? null, gaugeId }, nowMs);
    for (const { code, about, weight } of warningsBefore(state, facts)) {
      if (weight === "tell") continue;
      const key = `${code} ${about ?? ""}`;
      const spindleIds = [...(found.get(key)?.spindleIds ?? []), spindleId];
      found.set(key, { code, about, weight, spindleIds });
    }
  }
  return [...found.values()];
}
