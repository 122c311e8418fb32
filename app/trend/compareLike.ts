import { median } from "../numerics/median.ts";
import { medianAbsoluteDeviation, normalPerMad } from "../numerics/medianAbsoluteDeviation.ts";

/** A spindle among its like. */
export type LikeEntry = {
  readonly spindleId: string;
  /** What makes spindles alike: the type of unit, the taper with the spring pack, the limits. */
  readonly group: string;
  /** Present level as a fraction of nominal, or of the baseline: the same measure for all. */
  readonly level: number;
  /** Loss a year as a fraction, down is negative; undefined where it cannot be told. */
  readonly perYear: number | undefined;
};

export type LikeComparison = {
  readonly spindleId: string;
  readonly group: string;
  /** Spindles of the group, this one with them. */
  readonly n: number;
  readonly medianLevel: number;
  /** Distance from the median in robust standard deviations of the group; undefined where that shows no spread. */
  readonly levelZ: number | undefined;
  readonly medianPerYear: number | undefined;
  readonly perYearZ: number | undefined;
  /** Clearly lower, or clearly faster falling, than its like. */
  readonly standsOut: boolean;
};

/** Fewer make no group to compare with. */
const LEAST = 4;
/** In robust standard deviations; common practice, no source. */
const FAR = 3.5;

/**
 * Each spindle beside those of its kind, by medians: what is usual for the kind, and who stands out from it.
 * @returns  in the order of the entries; spindles of groups with fewer than four are left out
 */
export function compareLike(entries: readonly LikeEntry[]): LikeComparison[] {
  const groups = Map.groupBy(entries, (e) => e.group);
  return entries.flatMap((entry) => {
    const like = groups.get(entry.group)!; // the entry itself is in it
    if (like.length < LEAST) return [];
    const level = place(
      entry.level,
      like.map((e) => e.level),
    );
    const slopes = like.flatMap((e) => (e.perYear === undefined ? [] : [e.perYear]));
    const slope = slopes.length < LEAST ? undefined : place(entry.perYear, slopes);
    return [
      {
        spindleId: entry.spindleId,
        group: entry.group,
        n: like.length,
        medianLevel: level.middle,
        levelZ: level.z,
        medianPerYear: slope?.middle,
        perYearZ: slope?.z,
        standsOut: (level.z ?? 0) < -FAR || (slope?.z ?? 0) < -FAR,
      },
    ];
  });
}

function place(value: number | undefined, all: readonly number[]): { middle: number; z: number | undefined } {
  const middle = median(all);
  const spread = normalPerMad * medianAbsoluteDeviation(all);
  return { middle, z: value === undefined || !(spread > 0) ? undefined : (value - middle) / spread };
}
