import type { Generations } from "../../../app/contract/backupViews.ts";

const DAY_MS = 86_400_000;

export const usualGenerations: Generations = { days: 14, weeks: 8, months: 24 };

/**
 * Which backups may go: all but the newest three, and the newest of each of the last days, weeks and months that
 * have one. A day without a backup does not use up a generation.
 * @param atMs  when each backup was made
 * @returns  positions in `atMs`
 */
export function expired(atMs: readonly number[], keep: Generations): number[] {
  const newestFirst = atMs.map((_, i) => i).sort((a, b) => atMs[b]! - atMs[a]!);
  const kept = new Set(newestFirst.slice(0, 3));
  const spans = [
    [keep.days, (ms: number) => Math.floor(ms / DAY_MS)],
    [keep.weeks, (ms: number) => Math.floor((ms / DAY_MS + 3) / 7)], // weeks begin on Monday; day 0 was a Thursday
    [keep.months, (ms: number) => new Date(ms).toISOString().slice(0, 7)],
  ] as const;
  for (const [count, spanOf] of spans) {
    const seen = new Set<number | string>();
    for (const i of newestFirst) {
      const span = spanOf(atMs[i]!);
      if (seen.has(span) || seen.size >= count) continue;
      seen.add(span);
      kept.add(i);
    }
  }
  return newestFirst.filter((i) => !kept.has(i)).sort((a, b) => a - b);
}
