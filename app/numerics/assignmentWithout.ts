import type { Assignment } from "./assignment.ts";

/**
 * How much more the cheapest assignment costs when one row may not have certain columns: what is lost if its choice was
 * wrong. One search along the prices of the solved assignment, so it is far cheaper than solving again.
 * @param solved  of the same costs
 * @param forbidden  whether the row may not have the column; its own column is to be among them
 * @returns  0 or more; Infinity when there is no other way
 */
export function assignmentWithout(
  cost: ArrayLike<number>,
  columns: number,
  solved: Assignment,
  row: number,
  forbidden: (column: number) => boolean,
): number {
  const { columnOf, rowPrice, columnPrice } = solved;
  const rowAt = new Int32Array(columns).fill(-1);
  for (let r = 0; r < columnOf.length; r += 1) rowAt[columnOf[r]!] = r;
  const own = columnOf[row]!;
  const far = new Float64Array(columns).fill(Number.POSITIVE_INFINITY);
  const done = new Uint8Array(columns);
  const relax = (from: number, base: number) => {
    for (let j = 0; j < columns; j += 1) {
      if (done[j] === 1 || (from === row && forbidden(j))) continue;
      // Rounding may leave a hair below zero, which a shortest path must not run round.
      const reduced = Math.max(0, cost[from * columns + j]! - rowPrice[from]! - columnPrice[j]!);
      if (base + reduced < far[j]!) far[j] = base + reduced;
    }
  };
  // Columns left over count as held by rows that cost nothing anywhere: taking one lets any other be left over.
  const leaveFree = (base: number) => {
    for (let j = 0; j < columns; j += 1) if (done[j] === 0) far[j] = Math.min(far[j]!, base - columnPrice[j]!);
  };
  relax(row, 0);
  for (;;) {
    let at = -1;
    for (let j = 0; j < columns; j += 1) if (done[j] === 0 && far[j]! < (at < 0 ? Infinity : far[at]!)) at = j;
    // The ring of moves is closed when somebody takes the column that the row gave up.
    if (at < 0 || at === own) return at < 0 ? Number.POSITIVE_INFINITY : far[own]!;
    done[at] = 1;
    const holder = rowAt[at]!;
    if (holder >= 0) relax(holder, far[at]!);
    else leaveFree(far[at]!);
  }
}
