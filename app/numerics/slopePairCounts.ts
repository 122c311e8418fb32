import type { SlopeOrder } from "./SlopeOrder.ts";

/** Positions a block of the counter holds: eight words of 32. */
const BLOCK_BITS = 8;

/**
 * How many pairs of points lie under a trial slope, and how many at or under it: a pair does when the point of greater
 * x stands first in the order of y - slope x. The points are passed by x; which positions were seen already is kept
 * as one bit each, with the sums over blocks of bits in a binary indexed tree, so that the counter of 100,000 points
 * stays in the nearest cache.
 * @param nextX  for each point, in the order of x, the first one with a greater x; pairs of equal x are no pair
 * @see P. M. Fenwick, Software: Practice and Experience 24 (1994) 327
 */
export function slopePairCounts(
  { position, tied }: Pick<SlopeOrder, "position" | "tied">,
  nextX: Uint32Array,
): { less: number; atMost: number } {
  const n = position.length;
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
  return { less, atMost: less + tied };
}

/** Number of bits set (H. S. Warren, Hacker's Delight, 5-1). */
function bitsIn(word: number): number {
  let v = word - ((word >>> 1) & 0x55555555);
  v = (v & 0x33333333) + ((v >>> 2) & 0x33333333);
  return Math.imul((v + (v >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
