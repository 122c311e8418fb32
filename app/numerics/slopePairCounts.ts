/** Positions a block of the counter holds: eight words of 32. */
const BLOCK_BITS = 8;

/**
 * How many pairs of points lie under a trial slope, and how many at or under it, from the points' places in the order
 * of y - slope x: a pair does when the point of greater x has the lower place. The points are passed by x; which
 * positions were seen already is kept as one bit each, with the sums over blocks of bits in a binary indexed tree, so that
 * the counter of 100,000 points stays in the nearest cache.
 * @param place  by ascending x, each below the number of points; points tied under the slope share one
 * @param nextX  for each position the first one with a greater x; pairs of equal x are no pair
 * @see P. M. Fenwick, Software: Practice and Experience 24 (1994) 327
 */
export function slopePairCounts(place: Uint32Array, nextX: Uint32Array): { less: number; atMost: number } {
  const n = place.length;
  const position = positionsOf(place);
  const seen = new Uint32Array((n >> 5) + 1);
  const blocks = (n >> BLOCK_BITS) + 2;
  const sums = new Uint32Array(blocks);
  let less = 0;
  for (let start = 0; start < n; ) {
    const end = nextX[start]!;
    for (let i = start; i < end; i += 1) {
      const at = position[i]!;
      const word = at >> 5;
      let below = 0;
      for (let b = at >> BLOCK_BITS; b > 0; b &= b - 1) below += sums[b]!;
      for (let w = (at >> BLOCK_BITS) << (BLOCK_BITS - 5); w < word; w += 1) below += bitsIn(seen[w]!);
      below += bitsIn(seen[word]! & ((1 << (at & 31)) - 1));
      less += start - below;
    }
    for (let i = start; i < end; i += 1) {
      const at = position[i]!;
      seen[at >> 5]! |= 1 << (at & 31);
      for (let b = (at >> BLOCK_BITS) + 1; b < blocks; b += b & -b) sums[b]! += 1;
    }
    start = end;
  }
  return { less, atMost: less + tiedPairs(place, nextX) };
}

/** Places made unique: of those that share one, the lesser x comes first and so makes no pair. */
function positionsOf(place: Uint32Array): Uint32Array {
  const n = place.length;
  const next = new Uint32Array(n + 1);
  for (let i = 0; i < n; i += 1) next[place[i]! + 1]! += 1;
  for (let p = 1; p <= n; p += 1) next[p]! += next[p - 1]!;
  const position = new Uint32Array(n);
  for (let i = 0; i < n; i += 1) position[i] = next[place[i]!]!++;
  return position;
}

/** Number of bits set (H. S. Warren, Hacker's Delight, 5-1). */
function bitsIn(word: number): number {
  let v = word - ((word >>> 1) & 0x55555555);
  v = (v & 0x33333333) + ((v >>> 2) & 0x33333333);
  return Math.imul((v + (v >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** Pairs of different x that share a place: all that do, less those of one x. */
function tiedPairs(place: Uint32Array, nextX: Uint32Array): number {
  const n = place.length;
  const sharing = new Uint32Array(n);
  for (let i = 0; i < n; i += 1) sharing[place[i]!]! += 1;
  let pairs = 0;
  for (let p = 0; p < n; p += 1) pairs += (sharing[p]! * (sharing[p]! - 1)) / 2;
  const sameX = new Uint32Array(n);
  for (let start = 0; start < n; ) {
    const end = nextX[start]!;
    if (end - start > 1) {
      for (let i = start; i < end; i += 1) pairs -= sameX[place[i]!]!++;
      for (let i = start; i < end; i += 1) sameX[place[i]!] = 0;
    }
    start = end;
  }
  return pairs;
}
