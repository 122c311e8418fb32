import type { DockingView, DockingWarning, StopView, TakeView } from "../../app/contract/roundViews.ts";
import type { GaugeClock } from "../../app/round/clock/GaugeClock.ts";
import type { DumpFormat } from "../../app/round/dump/DumpFormat.ts";
import type { DumpReading, DumpRecord } from "../../app/round/dump/DumpReading.ts";
import type { DumpHints, LearnedDump } from "../../app/round/dump/LearnedDump.ts";
import type { RoundMatch } from "../../app/round/match/RoundMatch.ts";
import type { StoredReading } from "../../app/round/memory/freshRecords.ts";

/** What a page asked to be read, kept so that it can be read anew with other answers. */
export type DockingRequest = {
  readonly dockingId: string;
  readonly roundId: string | undefined;
  readonly gaugeId: string | undefined;
  readonly formatId: string | undefined;
  readonly source: DockingView["source"];
  readonly fileName: string | undefined;
  readonly text: string;
  readonly hints: DumpHints;
  /** The user has said that nothing of it was docked before, though it looks so. */
  readonly allNew: boolean;
  /** What the gauge's display showed, ms as if in UTC. */
  readonly gaugeNowMs: number | undefined;
  /** By this PC's clock, when it was read. */
  readonly pcMs: number;
  /** Values typed in from a sheet instead of text. */
  readonly typed: readonly (DumpRecord & { readonly spindleId: string })[] | undefined;
};

/** A docking in work: nothing of it is filed. */
export type DockingWork = {
  readonly request: DockingRequest;
  readonly learned: LearnedDump | undefined;
  readonly format: DumpFormat | undefined;
  readonly formatName: string | undefined;
  readonly reading: DumpReading | undefined;
  readonly clock: (GaugeClock & { readonly assumed: boolean }) | undefined;
  /** The new records, in the order of the memory, and their instants. */
  readonly records: readonly DumpRecord[];
  readonly atMs: readonly (number | undefined)[];
  readonly known: number;
  readonly doubtful: boolean;
  /** The round as it was matched with. */
  readonly roundVersion: string | undefined;
  readonly stops: readonly StopView[];
  readonly match: RoundMatch;
  readonly warnings: readonly DockingWarning[];
  /** All readings that came, oldest first, and how many dockings were filed when they were known again. */
  readonly memory: readonly StoredReading[];
  readonly dockedBefore: number;
};

/** What pages see of it. */
export function toDockingView(work: DockingWork): DockingView {
  const { request, learned, reading, clock, records, match } = work;
  return {
    dockingId: request.dockingId,
    roundId: request.roundId,
    gaugeId: request.gaugeId,
    source: request.source,
    fileName: request.fileName,
    formatName: work.formatName,
    columns: learned?.columns ?? [],
    undecided: learned?.undecided ?? [],
    clock: clock && {
      offsetMs: clock.offsetMs,
      driftPpm: clock.driftPpm,
      setSince: clock.setSince,
      assumed: clock.assumed,
    },
    lines: {
      rejected: (reading?.rejected ?? []).slice(0, 100),
      passedOver: reading?.passedOver ?? 0,
      announced: reading?.announced,
      incomplete: reading?.incomplete ?? false,
      tooMany: reading?.tooMany ?? false,
    },
    known: work.known,
    doubtful: work.doubtful,
    takes: records.map((record, i) => toTakeView(record, work.atMs[i])),
    stops: work.stops,
    visits: match.visits,
    questions: match.questions,
    missing: match.missing,
    warnings: work.warnings,
  };
}

function toTakeView(record: DumpRecord, atMs: number | undefined): TakeView {
  const { number, raw, figure, valueN, refused, stamp, badDate, location, kind } = record;
  return { number, raw, figure, valueN, refused, stamp, badDate, atMs, location, kind };
}
