/**
 * How many pairs of points lie under a trial slope, and how many at or under it, from the points' places in the order
 * of y - slope x: a pair does when the point of greater x has the lower place. Places already passed are summed in a
 * binary indexed tree, which needs half the time of counting inversions by merging.
 * @param place  by ascending x, each below the number of points; points tied under the slope share one
 * @param nextX  for each position the first one with a greater x; pairs of equal x are no pair
 * @see P. M. Fenwick, Software: Practice and Experience 24 (1994) 327
 */
export function slopePairCounts(place: Uint32Array, nextX: Uint32Array): { less: number; atMost: number } {
  const n = place.length;
  const tree = new Uint32Array(n + 1);
  let less = 0;
  for (let start = 0; start < n; ) {
    const end = nextX[start]!;
    for (let i = start; i < end; i += 1) {
      let notAbove = 0;
      for (let at = place[i]! + 1; at > 0; at &= at - 1) notAbove += tree[at]!;
      less += start - notAbove;
    }
    for (let i = start; i < end; i += 1) {
      for (let at = place[i]! + 1; at <= n; at += at & -at) tree[at]! += 1;
    }
    start = end;
  }
  return { less, atMost: less + tiedPairs(place, nextX) };
}

/** Pairs of different x that share a place. */
function tiedPairs(place: Uint32Array, nextX: Uint32Array): number {
  const n = place.length;
  const all = new Uint32Array(n);
  const sameX = new Uint32Array(n);
  let pairs = 0;
  for (let start = 0; start < n; ) {
    const end = nextX[start]!;
    for (let i = start; i < end; i += 1) {
      const at = place[i]!;
      pairs += all[at]! - sameX[at]!;
      all[at]! += 1;
      sameX[at]! += 1;
    }
    for (let i = start; i < end; i += 1) sameX[place[i]!] = 0;
    start = end;
  }
  return pairs;
}
