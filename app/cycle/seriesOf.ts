import { generalizedEsd } from "../numerics/generalizedEsd.ts";
import { mean } from "../numerics/mean.ts";
import { median } from "../numerics/median.ts";
import { sampleStdDev } from "../numerics/sampleStdDev.ts";
import type { Cycle } from "./Cycle.ts";

/** A cycle that counts, with its number in the series (from 1, drops included). */
export type SeriesMember = { readonly number: number } & Pick<Cycle, "settledN" | "peakN" | "flags">;

/** What scatter of this size usually means; the words are `scatterSentence`'s or the screen's. */
export type Scatter = "small" | "usual" | "large" | "unknown";

export type SeriesOf = {
  /** Forces that were averaged: settled ones, or held peaks where no cycle has a settled force. */
  readonly basis: "settled" | "peak";
  readonly n: number;
  readonly meanN: number | undefined;
  /** Sample standard deviation; undefined below two forces, as everything that needs two. */
  readonly sN: number | undefined;
  readonly rangeN: number | undefined;
  /** Standard uncertainty of the mean: s / sqrt(n). */
  readonly meanUncertaintyN: number | undefined;
  /** (first - mean of the others) / mean of the others. */
  readonly firstDifference: number | undefined;
  /** Numbers of the members named as outliers, in order. They still count: only the user drops. */
  readonly outliers: readonly number[];
  readonly scatter: Scatter;
};

/** Range over the mean above which practice cleans and measures again; common practice, no source. */
const largeRange = 0.05;
/** Under this nothing in seat or friction needs a thought; common practice, no source. */
const smallRange = 0.02;
const enoughForEsd = 10;

/**
 * Figures of the cycles of one check. A member without a force (overload, or no settled force among settled ones) is
 * left out of the figures, not of the series.
 * @see generalizedEsd for ten forces and more
 */
export function seriesOf(members: readonly SeriesMember[]): SeriesOf {
  const settled = members.filter((m) => m.settledN !== undefined);
  const basis = settled.length > 0 ? "settled" : "peak";
  const counting = basis === "settled" ? settled : members.filter((m) => m.flags.includes("peakHold"));
  const forces = counting.map((m) => m.settledN ?? m.peakN);
  const n = forces.length;
  const meanN = n > 0 ? mean(forces) : undefined;
  const sN = n > 1 ? sampleStdDev(forces) : undefined;
  const rangeN = n > 1 ? Math.max(...forces) - Math.min(...forces) : undefined;
  return {
    basis,
    n,
    meanN,
    sN,
    rangeN,
    meanUncertaintyN: sN === undefined ? undefined : sN / Math.sqrt(n),
    firstDifference: firstDifference(forces),
    outliers: outliersOf(forces).map((i) => counting[i]!.number),
    scatter: scatterOf(rangeN, meanN),
  };
}

function firstDifference(forces: readonly number[]): number | undefined {
  if (forces.length < 2) return undefined;
  const others = mean(forces.slice(1));
  return others > 0 ? (forces[0]! - others) / others : undefined;
}

function scatterOf(rangeN: number | undefined, meanN: number | undefined): Scatter {
  if (rangeN === undefined || meanN === undefined || !(meanN > 0)) return "unknown";
  if (rangeN > largeRange * meanN) return "large";
  return rangeN > smallRange * meanN ? "usual" : "small";
}

function outliersOf(forces: readonly number[]): number[] {
  const n = forces.length;
  if (n < enoughForEsd) return beyondRange(forces);
  return generalizedEsd(forces, Math.floor(n / 5)).outliers.sort((a, b) => a - b);
}

/**
 * Few forces: where their range passes 5 % of the mean, those farthest from the median are named until the others lie
 * within it. When that would take half of them, none stands out and none is named.
 */
function beyondRange(forces: readonly number[]): number[] {
  const left = forces.map((force, index) => ({ force, index }));
  const named: number[] = [];
  while (left.length > 0) {
    const values = left.map((v) => v.force);
    if (Math.max(...values) - Math.min(...values) <= largeRange * mean(values)) break;
    const middle = median(values);
    left.sort((a, b) => Math.abs(a.force - middle) - Math.abs(b.force - middle) || a.index - b.index);
    named.push(left.pop()!.index);
  }
  return 2 * named.length < forces.length ? named.sort((a, b) => a - b) : [];
}

/** In plain words, for the command line and reports. Trade knowledge, no source. */
export function scatterSentence(scatter: Scatter): string {
  return sentences[scatter];
}

const sentences: Record<Scatter, string> = {
  small: "The clampings agree; seat and gripper behave alike each time.",
  usual: "Scatter as clamping units in use commonly show it.",
  large:
    "Over 5 % between the clampings commonly means friction, dirt or a bad seat: clean taper and gripper and measure again before believing the mean.",
  unknown: "One clamping says nothing of the scatter; three to five are usual.",
};
