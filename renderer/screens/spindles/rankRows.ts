import type { FleetView, SpindleRow } from "../../../app/contract/recordViews.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";

const worstFirst: readonly (Verdict | undefined)[] = ["stop", "act", "cannotTell", "watch", "good", undefined];

/**
 * What to do next first: by the fleet's rank where it is known, a standing stop before all; until the ranking is there, by the last
 * verdict. Retired ones come last.
 */
export function rankRows(rows: readonly SpindleRow[], fleet: FleetView | undefined): readonly SpindleRow[] {
  const ranks = new Map(fleet?.rows.map((row) => [row.spindleId, row.rank]));
  const key = (row: SpindleRow) =>
    (row.spindle.state === "retired" ? 1e9 : 0) +
    (ranks.get(row.spindle.spindleId) ?? 1e6 + worstFirst.indexOf(row.stopped ? "stop" : row.verdict) * 1e3);
  return rows
    .map((row) => ({ row, key: key(row) }))
    .sort((a, b) => a.key - b.key)
    .map(({ row }) => row);
}
