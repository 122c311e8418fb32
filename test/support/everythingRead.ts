import type { Db } from "../../main/store/db.ts";
import { loadDraft } from "../../main/store/draft.ts";
import { chainReports } from "../../main/store/ledger/LedgerReport.ts";
import { allEntries, entriesOfKind } from "../../main/store/ledger/readEntry.ts";
import { signedHeads } from "../../main/store/ledger/signedHeads.ts";
import { adapterList } from "../../main/store/records/adapters.ts";
import { checkPage, readCheck } from "../../main/store/records/checks.ts";
import { checkCountsByTool, gaugeList } from "../../main/store/records/gauges.ts";
import { allHistoryPoints, historyPoints } from "../../main/store/records/histories.ts";
import { operatorList } from "../../main/store/records/operators.ts";
import { patternList } from "../../main/store/records/patterns.ts";
import { serviceEvents } from "../../main/store/records/serviceEvents.ts";
import { spindleList } from "../../main/store/records/spindles.ts";
import { cyclesWithWaveform, readWaveform } from "../../main/store/records/waveforms.ts";
import { readSettings, readWorks } from "../../main/store/records/works.ts";

/** What every query of the store returns, as one text; a query that throws counts as an answer of its own. */
export function everythingRead(db: Db): string {
  const spindles = quietly(() => spindleList(db).map((s) => s.spindle.spindleId)) ?? [];
  const answers: (() => unknown)[] = [
    () => [readWorks(db), readSettings(db)],
    () => spindleList(db),
    () => [adapterList(db), gaugeList(db), [...checkCountsByTool(db)], operatorList(db), patternList(db)],
    () => [chainReports(db, []), signedHeads(db), loadDraft(db)],
    () => [...allEntries(db)],
    () => [entriesOfKind(db, "void"), entriesOfKind(db, "proof")],
    () => [...allHistoryPoints(db)],
    ...spindles.flatMap((id) => [
      () => [historyPoints(db, id), serviceEvents(db, id)],
      () => checkPage(db, id, 1000).map((check) => [check, readCheck(db, check.checkId), waveformsOf(db, check.place)]),
    ]),
  ];
  return JSON.stringify(answers.map((ask) => quietly(ask) ?? "cannot be read"));
}

const waveformsOf = (db: Db, place: number) =>
  cyclesWithWaveform(db, place).map((id) => Buffer.from(readWaveform(db, place, id)!.bytes).toString("hex"));

function quietly<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch {
    return undefined;
  }
}
