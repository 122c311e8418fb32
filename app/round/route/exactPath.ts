/** Groups and stops within a group up to which every order is weighed. */
export const EXACT_GROUP = 11;
export const EXACT_GROUPS = 9;

/**
 * The cheapest open path over all points when points of one group are to stay together: within each group the best path
 * between any two of its ends, then the best chain of groups. Both by dynamic programming over subsets, so the answer
 * is exact.
 * @param cost  n x n, symmetric
 * @param groups  positions of the points, each once
 * @returns  positions in order
 * @throws RangeError  a group, or the number of groups, above what can be weighed
 * @see M. Held, R. M. Karp, J. SIAM 10 (1962) 196
 */
export function exactPath(cost: Float64Array, n: number, groups: readonly (readonly number[])[]): number[] {
  if (groups.length > EXACT_GROUPS || groups.some((g) => g.length > EXACT_GROUP))
    throw new RangeError(`exactPath weighs at most ${EXACT_GROUPS} groups of ${EXACT_GROUP}`);
  const inner = groups.map((group) => groupPaths(cost, n, group));
  const g = groups.length;
  const size = 1 << g;
  // best[set * n + exit]: cheapest way through the groups of the set that ends at the point `exit`.
  const best = new Float64Array(size * n).fill(Number.POSITIVE_INFINITY);
  const entry = new Int32Array(size * n).fill(-1);
  const previous = new Int32Array(size * n).fill(-1);
  for (let set = 1; set < size; set += 1) {
    for (let k = 0; k < g; k += 1) {
      if ((set & (1 << k)) === 0) continue;
      const rest = set ^ (1 << k);
      const group = groups[k]!;
      const m = group.length;
      for (let s = 0; s < m; s += 1) {
        const { from, arrive } = rest === 0 ? { from: -1, arrive: 0 } : nearest(cost, n, best, rest, group[s]!);
        for (let t = 0; t < m; t += 1) {
          const total = arrive + inner[k]!.length[s * m + t]!;
          const at = set * n + group[t]!;
          if (total < best[at]!) {
            best[at] = total;
            entry[at] = s;
            previous[at] = from;
          }
        }
      }
    }
  }
  return unwind(groups, inner, best, entry, previous, n);
}

function nearest(cost: Float64Array, n: number, best: Float64Array, set: number, to: number) {
  let from = -1;
  let arrive = Number.POSITIVE_INFINITY;
  for (let p = 0; p < n; p += 1) {
    const way = best[set * n + p]! + cost[p * n + to]!;
    if (way < arrive) {
      arrive = way;
      from = p;
    }
  }
  return { from, arrive };
}

type Inner = { readonly length: Float64Array; readonly path: (s: number, t: number) => number[] };

/** The shortest path over a group from each of its points to each other. */
function groupPaths(cost: Float64Array, n: number, group: readonly number[]): Inner {
  const m = group.length;
  const size = 1 << m;
  const tables = group.map((_, s) => {
    const best = new Float64Array(size * m).fill(Number.POSITIVE_INFINITY);
    const before = new Int8Array(size * m).fill(-1);
    best[(1 << s) * m + s] = 0;
    for (let set = 1; set < size; set += 1) {
      for (let t = 0; t < m; t += 1) {
        const here = best[set * m + t]!;
        if (here === Number.POSITIVE_INFINITY) continue;
        for (let u = 0; u < m; u += 1) {
          if ((set & (1 << u)) !== 0) continue;
          const at = (set | (1 << u)) * m + u;
          const way = here + cost[group[t]! * n + group[u]!]!;
          if (way < best[at]!) {
            best[at] = way;
            before[at] = t;
          }
        }
      }
    }
    return { best, before };
  });
  const length = new Float64Array(m * m);
  for (let s = 0; s < m; s += 1) {
    for (let t = 0; t < m; t += 1) length[s * m + t] = tables[s]!.best[(size - 1) * m + t]!;
  }
  return {
    length,
    path(s, t) {
      const back: number[] = [];
      for (let set = size - 1, at = t; at >= 0; ) {
        back.push(group[at]!);
        const to = tables[s]!.before[set * m + at]!;
        set ^= 1 << at;
        at = to;
      }
      return back.reverse();
    },
  };
}

function unwind(
  groups: readonly (readonly number[])[],
  inner: readonly Inner[],
  best: Float64Array,
  entry: Int32Array,
  previous: Int32Array,
  n: number,
): number[] {
  let set = (1 << groups.length) - 1;
  let exit = 0;
  for (let p = 1; p < n; p += 1) if (best[set * n + p]! < best[set * n + exit]!) exit = p;
  const parts: number[][] = [];
  while (set !== 0) {
    const k = groups.findIndex((group) => group.includes(exit));
    const at = set * n + exit;
    parts.unshift(inner[k]!.path(entry[at]!, groups[k]!.indexOf(exit)));
    set ^= 1 << k;
    exit = previous[at]!;
  }
  return parts.flat();
}
