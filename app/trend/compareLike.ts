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
  readonly level: number;
  readonly perYear: number | undefined;
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
  const groups = new Map<string, Usual>();
  for (const [group, like] of Map.groupBy(entries, (e) => e.group)) {
    // Once a group, not once a spindle: a works may have a thousand of a kind.
    if (like.length >= LEAST) groups.set(group, usualOf(like));
  }
  return entries.flatMap((entry) => {
    const usual = groups.get(entry.group);
    if (usual === undefined) return [];
    const levelZ = distance(entry.level, usual.level);
    const perYearZ = usual.perYear === undefined ? undefined : distance(entry.perYear, usual.perYear);
    return [
      {
        spindleId: entry.spindleId,
        group: entry.group,
        n: usual.n,
        level: entry.level,
        perYear: entry.perYear,
        medianLevel: usual.level.middle,
        levelZ,
        medianPerYear: usual.perYear?.middle,
        perYearZ,
        standsOut: (levelZ ?? 0) < -FAR || (perYearZ ?? 0) < -FAR,
      },
    ];
  });
}

type Middle = { readonly middle: number; readonly spread: number };
type Usual = { readonly n: number; readonly level: Middle; readonly perYear: Middle | undefined };

function usualOf(like: readonly LikeEntry[]): Usual {
  const slopes = like.flatMap((e) => (e.perYear === undefined ? [] : [e.perYear]));
  return {
    n: like.length,
    level: middleOf(like.map((e) => e.level)),
    perYear: slopes.length < LEAST ? undefined : middleOf(slopes),
  };
}

const middleOf = (all: readonly number[]): Middle => ({
  middle: median(all),
  spread: normalPerMad * medianAbsoluteDeviation(all),
});

function distance(value: number | undefined, { middle, spread }: Middle): number | undefined {
  return value === undefined || !(spread > 0) ? undefined : (value - middle) / spread;
}
