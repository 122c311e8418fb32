import type { FleetView } from "../../app/contract/recordViews.ts";
import type { ServiceEvent } from "../../app/ledger/register.ts";
import { commonModes } from "../../app/trend/commonMode.ts";
import { compareLike, type LikeEntry } from "../../app/trend/compareLike.ts";
import type { History } from "../../app/trend/History.ts";
import { likeEntryOf } from "../../app/trend/likeEntryOf.ts";
import { rankFleet } from "../../app/trend/rankFleet.ts";
import { trendOf } from "../../app/trend/trendOf.ts";
import type { Db } from "../store/db.ts";
import { allHistoryRows, type HistoryRow } from "../store/records/histories.ts";
import { allServiceEvents } from "../store/records/serviceEvents.ts";
import { type SpindleStanding, spindleList } from "../store/records/spindles.ts";
import { historyOf } from "./historyOf.ts";

/** Ranking of all spindles and what moved together, from the data file; `goOn` is called between spindles and may throw. */
export function fleetOf(db: Db, goOn: () => void = () => undefined): FleetView {
  const standings = spindleList(db).filter((s) => s.spindle.state === "inUse");
  const histories = historiesOf(db, standings);
  const moves = commonModes(histories);
  const alike: LikeEntry[] = [];
  const rows = rankFleet(
    standings.map((standing, i) => {
      goOn();
      const trend = trendOf(histories[i]!, { sharedMoves: moves });
      const { spindleId, taper, limits } = standing.spindle;
      const entry = likeEntryOf({ spindleId, taper, nominalN: limits.nominalN }, trend);
      if (entry !== undefined) alike.push(entry);
      return {
        spindleId,
        trend,
        minimumN: limits.minimumN,
        verdict: standing.last?.verdict,
        stopped: standing.stop !== undefined,
        nextRoundMs: standing.dueOn === undefined ? undefined : Date.parse(standing.dueOn),
      };
    }),
  );
  return { rows, commonMode: moves, like: compareLike(alike) };
}

function historiesOf(db: Db, standings: readonly SpindleStanding[]): History[] {
  const rows = grouped(allHistoryRows(db), (row: HistoryRow) => row.spindleId);
  const events = grouped(allServiceEvents(db), (event: ServiceEvent) => event.spindleId);
  return standings.map(({ spindle }) =>
    historyOf(
      spindle.spindleId,
      spindle.limits,
      rows.get(spindle.spindleId) ?? [],
      events.get(spindle.spindleId) ?? [],
    ),
  );
}

function grouped<T>(all: Iterable<T>, key: (one: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const group = groups.get(key(one));
    if (group === undefined) groups.set(key(one), [one]);
    else group.push(one);
  }
  return groups;
}
