import type { ProofReading } from "./ProofReading.ts";

/**
 * Sorts readings into load steps: loads within 1 % of the greatest are the same step, and so are those of one
 * step label, as long as they lie within 5 %. Labels that merely count rows therefore do no harm.
 * @returns  for each reading its step, numbered from 0 by rising load
 */
export function levelsOf(readings: readonly ProofReading[]): readonly number[] {
  const greatest = readings.reduce((most, r) => Math.max(most, Math.abs(r.reference)), 0);
  const order = readings.map((_, i) => i).sort((a, b) => readings[a]!.reference - readings[b]!.reference);
  const cluster = readings.map(() => 0);
  let start = Number.NEGATIVE_INFINITY;
  let count = -1;
  // A cluster is measured from its first load, so that evenly spread loads do not chain into one.
  for (const i of order) {
    const load = readings[i]!.reference;
    if (load - start > 0.01 * greatest) {
      count += 1;
      start = load;
    }
    cluster[i] = count;
  }
  const joined = joinByLabel(readings, cluster, 0.05 * greatest);
  const used = [...new Set(order.map((i) => joined[i]!))];
  const rank = new Map(used.map((level, k) => [level, k]));
  return joined.map((level) => rank.get(level)!);
}

function joinByLabel(readings: readonly ProofReading[], cluster: readonly number[], widest: number): readonly number[] {
  const target = new Map<number, number>();
  const root = (c: number): number => (target.has(c) ? root(target.get(c)!) : c);
  const labels = Map.groupBy(
    readings.map((_, i) => i).filter((i) => readings[i]!.step !== undefined),
    (i) => readings[i]!.step!,
  );
  for (const members of labels.values()) {
    let [low, high] = [Infinity, -Infinity];
    let first = Infinity;
    for (const i of members) {
      low = Math.min(low, readings[i]!.reference);
      high = Math.max(high, readings[i]!.reference);
      first = Math.min(first, root(cluster[i]!));
    }
    if (high - low > widest) continue;
    for (const i of members) if (root(cluster[i]!) !== first) target.set(root(cluster[i]!), first);
  }
  return cluster.map(root);
}
