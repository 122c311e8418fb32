export type Assignment = {
  readonly columnOf: Int32Array;
  readonly cost: number;
  /** Dual prices: no pair costs less than the sum of its two, the chosen ones exactly that. Free columns have 0. */
  readonly rowPrice: Float64Array;
  readonly columnPrice: Float64Array;
};

/**
 * The cheapest way to give each row a column of its own: shortest augmenting paths with dual prices, exact, in the
 * order of rows x rows x columns. A cost of `Infinity` forbids a pair.
 * @param cost  row by row, `rows * columns` entries, none NaN and none -Infinity; at least as many columns as rows
 * @returns  column of each row, the sum of their costs, and the prices that prove it
 * @throws RangeError  more rows than columns, a wrong number of entries, or no way that avoids every forbidden pair
 * @see R. Jonker, A. Volgenant, Computing 38 (1987) 325; the form with potentials is the textbook one
 */
export function assignment(cost: ArrayLike<number>, rows: number, columns: number): Assignment {
  if (rows > columns || cost.length !== rows * columns)
    throw new RangeError(`assignment requires rows <= columns and their product of costs, got ${rows} x ${columns}`);
  // Row and column 0 stand outside: column 0 holds the row that is being placed.
  const rowPrice = new Float64Array(rows + 1);
  const columnPrice = new Float64Array(columns + 1);
  const rowOf = new Int32Array(columns + 1);
  const before = new Int32Array(columns + 1);
  const least = new Float64Array(columns + 1);
  const seen = new Uint8Array(columns + 1);
  for (let row = 1; row <= rows; row += 1) {
    rowOf[0] = row;
    least.fill(Number.POSITIVE_INFINITY);
    seen.fill(0);
    let at = 0;
    // Plain loops: this is run once for every reading of a docking to see what the second best would cost.
    while (rowOf[at] !== 0) {
      seen[at] = 1;
      const from = rowOf[at]!;
      let step = Number.POSITIVE_INFINITY;
      let next = -1;
      for (let j = 1; j <= columns; j += 1) {
        if (seen[j] === 1) continue;
        const reduced = cost[(from - 1) * columns + j - 1]! - rowPrice[from]! - columnPrice[j]!;
        if (reduced < least[j]!) {
          least[j] = reduced;
          before[j] = at;
        }
        if (least[j]! < step) {
          step = least[j]!;
          next = j;
        }
      }
      if (next < 0) throw new RangeError("assignment found no way that avoids every forbidden pair");
      for (let j = 0; j <= columns; j += 1) {
        if (seen[j] === 1) {
          rowPrice[rowOf[j]!]! += step;
          columnPrice[j]! -= step;
        } else least[j]! -= step;
      }
      at = next;
    }
    for (; at !== 0; at = before[at]!) rowOf[at] = rowOf[before[at]!]!;
  }
  const columnOf = new Int32Array(rows);
  let sum = 0;
  for (let j = 1; j <= columns; j += 1) {
    if (rowOf[j] === 0) continue;
    columnOf[rowOf[j]! - 1] = j - 1;
    sum += cost[(rowOf[j]! - 1) * columns + j - 1]!;
  }
  return { columnOf, cost: sum, rowPrice: rowPrice.subarray(1), columnPrice: columnPrice.subarray(1) };
}
