/**
 * The values of a column that are no accident of a damaged line: a damaged line stands alone, while what a gauge
 * says it says several times, mostly in a row. In a very short column everything counts.
 * @returns  the values kept, with how often each was seen, most frequent first
 */
export function established<T extends string | number>(column: readonly T[]): Map<T, number> {
  const counts = new Map<T, number>();
  const inRow = new Map<T, number>();
  column.forEach((value, i) => {
    counts.set(value, (counts.get(value) ?? 0) + 1);
    if (value === column[i - 1] || value === column[i + 1]) inRow.set(value, (inRow.get(value) ?? 0) + 1);
  });
  const ordered = [...counts].sort((a, b) => b[1] - a[1]);
  if (column.length < 8) return new Map(ordered);
  return new Map(
    ordered.filter(
      ([value, n]) => n >= 2 && (n >= 0.1 * column.length || (n >= 3 && (inRow.get(value) ?? 0) >= 0.5 * n)),
    ),
  );
}

/** The value that nearly all of a column share, or undefined. */
export function shared<T>(column: readonly T[], share = 0.93): T | undefined {
  const counts = new Map<T, number>();
  for (const value of column) counts.set(value, (counts.get(value) ?? 0) + 1);
  for (const [value, n] of counts) if (n >= share * column.length) return value;
  return undefined;
}

/** The most frequent value. */
export function mode<T>(column: readonly T[]): T | undefined {
  const counts = new Map<T, number>();
  for (const value of column) counts.set(value, (counts.get(value) ?? 0) + 1);
  let best: T | undefined;
  for (const [value, n] of counts) if (best === undefined || n > counts.get(best)!) best = value;
  return best;
}
