/**
 * Puts the k-th smallest value at index k, nothing greater before it and nothing smaller after it. Order statistics of
 * a window need no full sort; three-way comparisons are avoided because most windows hold many equal values
 * (a coarse gauge), on which a two-way partition that stops at equals stays fast.
 * @param values  reordered; finite
 * @param k  0 to `length - 1`
 * @param length  how many of the leading values count; all when absent
 * @returns  the k-th smallest
 * @throws RangeError  k outside the values
 * @see C. A. R. Hoare, Algorithm 65: Find, Communications of the ACM 4 (1961) 321
 */
export function selectInPlace(values: Float64Array, k: number, length = values.length): number {
  if (!(k >= 0 && k < length)) throw new RangeError(`selectInPlace requires k from 0 to ${length - 1}, got ${k}`);
  let low = 0;
  let high = length - 1;
  while (high > low) {
    const pivot = medianOfThree(values[low]!, values[(low + high) >> 1]!, values[high]!);
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i += 1;
      while (values[j]! > pivot) j -= 1;
      if (i <= j) {
        const swap = values[i]!;
        values[i] = values[j]!;
        values[j] = swap;
        i += 1;
        j -= 1;
      }
    }
    if (k <= j) high = j;
    else if (k >= i) low = i;
    else return pivot;
  }
  return values[k]!;
}

function medianOfThree(a: number, b: number, c: number): number {
  if (a < b) return b < c ? b : Math.max(a, c);
  return a < c ? a : Math.max(b, c);
}
