import table from "../../published/probability-functions.json" with { type: "json" };

/** Rows of the table of probability functions (mpmath 1.3.0, 50 digits and more), by function. */
export const published = table;

/** The greatest relative error of `f` over rows whose last entry is the true value, and the row it belongs to. */
export function worstError<A extends readonly unknown[]>(
  rows: readonly (readonly unknown[])[],
  f: (...args: A) => number,
) {
  let worst = { error: -1, row: [] as readonly unknown[] };
  for (const row of rows) {
    const truth = row.at(-1) as number; // the table's last column is a number in every row
    const value = f(...(row.slice(0, -1) as unknown as A)); // its other columns are the arguments in order
    const error = value === truth ? 0 : Math.abs(value / truth - 1);
    if (!(error <= worst.error)) worst = { error, row };
  }
  return worst;
}
