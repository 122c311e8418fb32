/**
 * How many pairs stand the wrong way round: an earlier value strictly greater than a later one. Counted while
 * merging, so n log n steps stand for n(n - 1)/2 comparisons.
 * @param values  each finite; sorted ascending afterwards
 * @returns  exact up to 2^53 pairs
 * @see W. R. Knight, A computer method for calculating Kendall's tau with ungrouped data, JASA 61 (1966) 436
 */
export function countInversions(values: Float64Array): number {
  const n = values.length;
  let from = values;
  let to: Float64Array = new Float64Array(n);
  let count = 0;
  for (let width = 1; width < n; width *= 2) {
    for (let low = 0; low < n; low += 2 * width) {
      const middle = Math.min(low + width, n);
      const high = Math.min(low + 2 * width, n);
      // Plain indices: this loop is nearly all of the time of a test on 100,000 values.
      let left = low;
      let right = middle;
      let k = low;
      while (left < middle && right < high) {
        if (from[left]! <= from[right]!) {
          to[k] = from[left]!;
          left += 1;
        } else {
          to[k] = from[right]!;
          right += 1;
          count += middle - left;
        }
        k += 1;
      }
      while (left < middle) to[k++] = from[left++]!;
      while (right < high) to[k++] = from[right++]!;
    }
    [from, to] = [to, from];
  }
  if (from !== values) values.set(from);
  return count;
}
