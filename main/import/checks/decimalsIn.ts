import type { Table } from "../Table.ts";

/** The most decimal places that figures of some columns have, four at most: an average has as many as fit. */
export function decimalsIn({ rows }: Table, places: readonly number[]): number {
  let most = 0;
  for (const { cells } of rows) {
    for (const place of places) most = Math.max(most, /\.(\d+)$/.exec(cells[place] ?? "")?.[1]?.length ?? 0);
  }
  return Math.min(most, 4);
}
