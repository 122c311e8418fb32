/**
 * The positions of values in ascending order; equal values keep the order they came in. A radix sort over the bits
 * of the doubles: at 100,000 values a sort with a comparison function takes some twenty times as long.
 * @param values  each finite
 * @param start  positions to begin with, each once; default 0, 1, 2 …. Sorting by y and then, from that order, by x
 *               gives the order by x with ties by y
 * @returns  positions in `values`, smallest value first
 * @see D. E. Knuth, The Art of Computer Programming 3, 5.2.5
 */
export function ascendingOrder(values: ArrayLike<number>, start?: Uint32Array): Uint32Array {
  const order = start === undefined ? counting(values.length) : start.slice();
  if (isAscending(values, order)) return order;
  return order.length < 200 ? insertion(values, order) : radix(values, order);
}

function counting(n: number): Uint32Array {
  const order = new Uint32Array(n);
  for (let i = 0; i < n; i += 1) order[i] = i;
  return order;
}

function isAscending(values: ArrayLike<number>, order: Uint32Array): boolean {
  for (let i = 1; i < order.length; i += 1) if (values[order[i - 1]!]! > values[order[i]!]!) return false;
  return true;
}

function insertion(values: ArrayLike<number>, order: Uint32Array): Uint32Array {
  for (let k = 1; k < order.length; k += 1) {
    const i = order[k]!;
    const value = values[i]!;
    let at = k;
    for (; at > 0 && values[order[at - 1]!]! > value; at -= 1) order[at] = order[at - 1]!;
    order[at] = i;
  }
  return order;
}

const DIGIT = 11; // bits a pass; 2,048 counters stay in the nearest cache
const MASK = (1 << DIGIT) - 1;
/** Values that agree in the upper half of their bits are put right by insertion, unless there are more in a row. */
const LONG = 32;

function radix(values: ArrayLike<number>, start: Uint32Array): Uint32Array {
  const { low, high } = sortableWords(values);
  const upper = sortedByWord(high, start);
  if (finished(values, upper.order, upper.words)) return upper.order;
  return sortedByWord(high, sortedByWord(low, start).order).order;
}

/** Three passes from the lowest digit up. The words move along with the positions, so that they are read in a row. */
function sortedByWord(word: Uint32Array, start: Uint32Array): { order: Uint32Array; words: Uint32Array } {
  const n = start.length;
  let from: Uint32Array = start.slice();
  let words: Uint32Array = new Uint32Array(n);
  for (let k = 0; k < n; k += 1) words[k] = word[from[k]!]!;
  let to: Uint32Array = new Uint32Array(n);
  let toWords: Uint32Array = new Uint32Array(n);
  const counts = new Uint32Array(1 << DIGIT);
  for (let shift = 0; shift < 32; shift += DIGIT) {
    counts.fill(0);
    for (let k = 0; k < n; k += 1) counts[(words[k]! >>> shift) & MASK]! += 1;
    if (counts[(words[0]! >>> shift) & MASK] === n) continue; // all the same: whole numbers have many such digits
    for (let digit = 0, sum = 0; digit <= MASK; digit += 1) {
      const count = counts[digit]!;
      counts[digit] = sum;
      sum += count;
    }
    for (let k = 0; k < n; k += 1) {
      const w = words[k]!;
      const at = counts[(w >>> shift) & MASK]!++;
      to[at] = from[k]!;
      toWords[at] = w;
    }
    [from, to] = [to, from];
    [words, toWords] = [toWords, words];
  }
  return { order: from, words };
}

/** Puts runs of equal upper halves in order; false where one is long and not in order, so that it would take too long. */
function finished(values: ArrayLike<number>, order: Uint32Array, words: Uint32Array): boolean {
  const n = order.length;
  for (let from = 0, to = 1; from < n; from = to, to = from + 1) {
    while (to < n && words[to] === words[from]) to += 1;
    if (to - from === 1) continue;
    const run = order.subarray(from, to);
    if (isAscending(values, run)) continue;
    if (to - from > LONG) return false;
    insertion(values, run);
  }
  return true;
}

/** The two halves of each double, changed so that they compare as unsigned whole numbers do. */
function sortableWords(values: ArrayLike<number>): { low: Uint32Array; high: Uint32Array } {
  const n = values.length;
  const low = new Uint32Array(n);
  const high = new Uint32Array(n);
  const halves = new DataView(new ArrayBuffer(8)); // writes and reads in one byte order, whatever the machine's is
  for (let i = 0; i < n; i += 1) {
    halves.setFloat64(0, values[i]! + 0); // -0 and 0 are equal
    const top = halves.getUint32(0);
    const flip = top >>> 31 === 1 ? 0xffffffff : 0; // negative: the greater bits are the smaller number
    high[i] = (top ^ (flip | 0x80000000)) >>> 0;
    low[i] = halves.getUint32(4) ^ flip;
  }
  return { low, high };
}
