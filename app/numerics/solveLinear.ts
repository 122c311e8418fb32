/**
 * Solves a small dense system of linear equations by elimination with the greatest pivot of each column.
 * @param matrix  n rows of n, each finite; stays as it is
 * @param right  n values
 * @returns  x with matrix x = right
 * @throws RangeError  shapes that do not fit, or rows that depend on one another
 * @see G. H. Golub and C. F. Van Loan, Matrix Computations, 3.4
 */
export function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const n = right.length;
  if (matrix.length !== n || matrix.some((row) => row.length !== n)) {
    throw new RangeError(`solveLinear requires ${n} rows of ${n}, got ${matrix.length}`);
  }
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  for (let column = 0; column < n; column += 1) {
    let pivot = column;
    for (let i = column + 1; i < n; i += 1) {
      if (Math.abs(rows[i]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = i;
    }
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    const top = rows[column]!;
    if (top[column] === 0) throw new RangeError("solveLinear requires rows that do not depend on one another");
    for (const row of rows.slice(column + 1)) {
      const factor = row[column]! / top[column]!;
      for (let j = column; j <= n; j += 1) row[j]! -= factor * top[j]!;
    }
  }
  return backSubstituted(rows);
}

function backSubstituted(rows: readonly (readonly number[])[]): number[] {
  const n = rows.length;
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = rows[i]![n]!;
    for (let j = i + 1; j < n; j += 1) sum -= rows[i]![j]! * x[j]!;
    x[i] = sum / rows[i]![i]!;
  }
  return x;
}
