/**
 * Exact distribution of Kendall's S when y stands in random order against x, ties kept as they are.
 * Ties in one of the two: the inversions of the orders of a multiset, whose generating function is a product.
 * Ties in both: group by group over what is left, which is why it is meant for small samples.
 * @param groupsX  how many values are equal, from the smallest x up; 1 for each that stands alone
 * @param groupsY  the same of y; both add up to n, 1 to 12
 * @returns  P(S = s), by s; values of no probability are absent
 * @throws RangeError  n out of range, or the groups do not add up to the same
 * @see M. G. Kendall, Rank Correlation Methods, 4th ed. (1970), 5.2; G. E. Andrews, The Theory of Partitions (1976), 3.4
 */
export function kendallNull(groupsX: readonly number[], groupsY: readonly number[]): ReadonlyMap<number, number> {
  const n = groupsX.reduce((sum, size) => sum + size, 0);
  if (!(n >= 1 && n <= 12) || groupsY.reduce((sum, size) => sum + size, 0) !== n) {
    throw new RangeError(`kendallNull requires 1 to 12 values, as many y as x, got ${n}`);
  }
  const ways = allAlone(groupsX)
    ? oneSided(n, groupsY)
    : allAlone(groupsY)
      ? oneSided(n, groupsX)
      : bothSided(groupsX, groupsY);
  let total = 0;
  for (const w of ways.values()) total += w;
  return new Map([...ways].filter(([, w]) => w > 0).map(([s, w]) => [s, w / total]));
}

const allAlone = (groups: readonly number[]) => groups.every((size) => size === 1);

function oneSided(n: number, sizes: readonly number[]): Map<number, number> {
  const pairs = (n * (n - 1) - sizes.reduce((sum, t) => sum + t * (t - 1), 0)) / 2;
  const ways = new Float64Array(pairs + 1); // orders by their number of inversions
  ways[0] = 1;
  let before = 0;
  for (const size of sizes) {
    for (let i = 1; i <= size; i += 1) {
      const factor = before + i; // times (1 - q^factor) / (1 - q^i)
      for (let k = pairs; k >= factor; k -= 1) ways[k]! -= ways[k - factor]!;
      for (let k = i; k <= pairs; k += 1) ways[k]! += ways[k - i]!;
    }
    before += size;
  }
  return new Map(Array.from(ways, (w, inversions) => [pairs - 2 * inversions, w]));
}

function bothSided(sizesX: readonly number[], sizesY: readonly number[]): Map<number, number> {
  const seen = new Map<string, Map<number, number>>();
  const from = (group: number, left: readonly number[]): Map<number, number> => {
    if (group === sizesX.length) return new Map([[0, 1]]);
    const key = `${group}:${left}`;
    const known = seen.get(key);
    if (known !== undefined) return known;
    const ways = new Map<number, number>();
    for (const choice of choices(left, sizesX[group]!)) {
      const rest = left.map((count, j) => count - choice.taken[j]!);
      const step = score(choice.taken, rest);
      for (const [s, w] of from(group + 1, rest)) ways.set(s + step, (ways.get(s + step) ?? 0) + w * choice.ways);
    }
    seen.set(key, ways);
    return ways;
  };
  return from(0, sizesY);
}

type Choice = { readonly taken: readonly number[]; readonly ways: number };

/** Each way to take `size` values out of what is left of the groups of y. */
function choices(left: readonly number[], size: number): readonly Choice[] {
  const first = left[0];
  if (first === undefined) return size === 0 ? [{ taken: [], ways: 1 }] : [];
  const found: Choice[] = [];
  for (let take = 0; take <= Math.min(first, size); take += 1) {
    for (const rest of choices(left.slice(1), size - take)) {
      found.push({ taken: [take, ...rest.taken], ways: rest.ways * binomial(first, take) });
    }
  }
  return found;
}

/** Later values greater less later values smaller, over all values taken now; groups of y stand in ascending order. */
function score(taken: readonly number[], rest: readonly number[]): number {
  let sum = 0;
  for (const [j, t] of taken.entries()) {
    for (const [k, r] of rest.entries()) sum += Math.sign(k - j) * t * r;
  }
  return sum;
}

function binomial(n: number, k: number): number {
  let value = 1;
  for (let i = 1; i <= k; i += 1) value = (value * (n - k + i)) / i;
  return value;
}
