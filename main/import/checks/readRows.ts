import type { ImportProblem } from "../../../app/contract/importViews.ts";
import type { ReadRow } from "./Reading.ts";
import { RowReader, type RowsToRead } from "./RowReader.ts";
import { sameCheck } from "./sameCheck.ts";

type RowsRead = {
  readonly rows: readonly ReadRow[];
  readonly problems: readonly ImportProblem[];
  readonly passedOver: number;
};

/** Reads every row of a table of checks; what cannot be read is named with row and column. */
export function readRows(work: RowsToRead, goOn: () => void): RowsRead {
  const { table, register } = work;
  const reader = new RowReader(work);
  const counts = new Map<string, Map<string, number>>();
  const rows: ReadRow[] = [];
  let passedOver = 0;
  for (const [i, row] of table.rows.entries()) {
    if (i % 1_000 === 0) goOn();
    const read = reader.read(row);
    if (read === undefined) continue;
    if (read.spindleId !== undefined && isThere(read, read.spindleId)) passedOver += 1;
    else rows.push(read);
  }
  return { rows, problems: reader.problems, passedOver };

  /** Each check that is there already stands for one row: five clampings that say the same are five. */
  function isThere({ atMs, valueN }: ReadRow, spindleId: string): boolean {
    let left = counts.get(spindleId);
    if (left === undefined) {
      left = new Map(register.there(spindleId));
      counts.set(spindleId, left);
    }
    const key = sameCheck(atMs, valueN);
    const count = left.get(key) ?? 0;
    if (count > 0) left.set(key, count - 1);
    return count > 0;
  }
}
