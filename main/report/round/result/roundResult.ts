import type { RoundView, StopView } from "../../../../app/contract/roundViews.ts";
import type { Works } from "../../../../app/ledger/register.ts";
import type { Docking } from "../../../../app/ledger/round.ts";
import { forecastInFile } from "../../../fleet/forecastInFile.ts";
import { dueNow } from "../../../rounds/dueNow.ts";
import { toRoundView } from "../../../rounds/toRoundView.ts";
import { worksDay } from "../../../rounds/worksDay.ts";
import type { Db } from "../../../store/db.ts";
import { entriesOfKind } from "../../../store/ledger/readEntry.ts";
import { checkPage, type FiledCheck, readCheck } from "../../../store/records/checks.ts";
import { readSpindle } from "../../../store/records/spindles.ts";
import { readWorks } from "../../../store/records/works.ts";
import type { FiledEntry } from "../../../store/Store.ts";
import { worksOutOfTheBox } from "../../../worksOutOfTheBox.ts";

/** One spindle of a round and what came of it. */
export type StopResult = {
  readonly stop: StopView;
  /** The newest check that counts; undefined: it was not measured. */
  readonly filed: FiledCheck | undefined;
  /** Filed under this round; else it was measured on its day or after. */
  readonly onRound: boolean;
  readonly dueOn: string | undefined;
};

export type RoundResult = {
  readonly round: RoundView;
  readonly entry: FiledEntry;
  readonly stops: readonly StopResult[];
  readonly dockings: readonly Docking[];
};

/** Of a spindle's newest checks so many are looked through. */
const LOOKED_AT = 50;

/**
 * A round as it ended, out of the data file; undefined when there is no such round.
 * @param nowMs  the next due dates are those of the due list at this moment
 */
export function roundResult(db: Db, roundId: string, nowMs: number): RoundResult | undefined {
  const entry = entriesOfKind(db, "round").findLast(({ body }) => body.roundId === roundId);
  if (entry === undefined) return undefined;
  const works = readWorks(db) ?? worksOutOfTheBox(roundId); // what the core goes by until somebody says
  const round = toRoundView(db, entry.body, works);
  return {
    round,
    entry,
    stops: round.stops.map((stop) => ({ stop, ...checkOf(db, round, stop, works, nowMs) })),
    dockings: entriesOfKind(db, "docking").flatMap(({ body }) => (body.roundId === roundId ? [body] : [])),
  };
}

function checkOf(db: Db, { roundId, on }: RoundView, { spindleId }: StopView, works: Works, nowMs: number) {
  const standing = readSpindle(db, spindleId);
  const due = standing && dueNow(db, works, standing, forecastInFile(db, standing), nowMs);
  const counted = checkPage(db, spindleId, LOOKED_AT)
    .filter(({ voided }) => voided === undefined)
    .flatMap(({ checkId }) => readCheck(db, checkId) ?? []);
  const own = counted.find(({ check }) => check.roundId === roundId);
  // Without the round's name: the first one since its day is the one it asked for, and rather none of another round.
  const since = counted.filter(({ summary }) => worksDay(summary.measuredAtMs, works.timeZone) >= on);
  const filed = own ?? since.findLast(({ check }) => check.roundId === null) ?? since.at(-1);
  return { filed, onRound: own !== undefined, dueOn: due?.dueOn };
}
