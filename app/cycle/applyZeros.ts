import { withZero, type ZeroTaken } from "./buildCycle.ts";
import type { Cycle, Rest } from "./Cycle.ts";

export type ZeroedSeries = {
  readonly cycles: readonly Cycle[];
  /** `first`: the first zero stands; `interpolated`: later ones were believed. */
  readonly mode: "first" | "interpolated";
  /** Half the greatest change of the zero since the last one that was believed: a rectangular half-width of the budget. */
  readonly halfChangeN: number;
};

/** Rest after which a gauge has come to itself and its zero is believed. */
const longRestS = 30;

/**
 * Takes the zero of each cycle of a series by one rule. The first zero stands (later rests that agree with it within
 * their scatter make it surer), unless the rests between the cycles
 * drift steadily (three true rests and more near one straight line that rises or falls beyond their scatter): then each
 * cycle's zero lies between those of the rests around it, in time. A zero after 30 s of rest is believed too, and those
 * between it and the one before are interpolated. A cycle next to a strained rest takes the zero between the nearest
 * true ones. Where the zero was set anew between two cycles, the rule begins anew. Pure: the same cycles give the same
 * forces, whether they come one by one or all at once; call it again when one is added.
 * @param cycles  of one series, as the detector gave them, in order
 * @param closing  the rest after the last cycle as far as it has lasted, when it is known better than at its hand-out
 */
export function applyZeros(cycles: readonly Cycle[], closing?: Rest): ZeroedSeries {
  const at = cycles.findLastIndex((cycle, i) => i > 0 && cycle.restBefore?.reset === true);
  if (at < 0) return ofOneZero(cycles, closing);
  const earlier = applyZeros(cycles.slice(0, at));
  const later = ofOneZero(cycles.slice(at), closing);
  return {
    cycles: [...earlier.cycles, ...later.cycles],
    mode: earlier.mode === "interpolated" ? earlier.mode : later.mode,
    halfChangeN: Math.max(earlier.halfChangeN, later.halfChangeN),
  };
}

function ofOneZero(cycles: readonly Cycle[], closing: Rest | undefined): ZeroedSeries {
  const rests = trueRests(cycles, closing);
  if (rests.length === 0) return { cycles, mode: "first", halfChangeN: 0 };
  const drifting = driftsSteadily(rests);
  const steady = drifting ? undefined : commonZero(rests);
  if (steady !== undefined)
    return { cycles: cycles.map((cycle) => withZero(cycle, steady)), mode: "first", halfChangeN: 0 };
  const anchors = drifting ? rests : rests.filter((r, i) => i === 0 || (r.restedS ?? 0) >= longRestS);
  const zeroed = cycles.map((cycle) => {
    const strained = cycle.zeroBeforeN === undefined || cycle.flags.includes("notReleased");
    return withZero(cycle, zeroAt(strained ? rests : anchors, middleOf(cycle)));
  });
  const mode = anchors.length > 1 ? "interpolated" : "first";
  return { cycles: zeroed, mode, halfChangeN: greatestChange(rests, anchors.at(-1)!) / 2 };
}

/** How far the rests after a believed zero went from it: one that came back in the end was away all the same. */
function greatestChange(rests: readonly Rest[], believed: Rest): number {
  const later = rests.slice(rests.lastIndexOf(believed));
  return later.reduce((most, r) => Math.max(most, Math.abs(r.indicationN - believed.indicationN)), 0);
}

/** Farther apart than this, in standard uncertainties, rests are not of one zero. */
const agreeing = 3;

/**
 * The zero when it has not changed: rests that all agree with the first within their own scatter are repeated looks at
 * it, and their weighted mean is the first zero, known better.
 */
function commonZero(rests: readonly Rest[]): ZeroTaken | undefined {
  const first = rests[0]!;
  let weights = 0;
  let sum = 0;
  for (const r of rests) {
    const u = Math.max(r.standardN, 1e-9);
    if (Math.abs(r.indicationN - first.indicationN) > agreeing * Math.hypot(u, first.standardN)) return undefined;
    weights += 1 / u ** 2;
    sum += (r.indicationN - first.indicationN) / u ** 2;
  }
  const least = Math.min(...rests.map((r) => r.standardN));
  const figures = rests.map((r) => r.indicationN);
  const alike = Math.max(...figures) - Math.min(...figures) < 0.2 * least;
  // Rests far more alike than their uncertainty share one rounding error, which no repetition takes away.
  return { indicationN: first.indicationN + sum / weights, standardN: alike ? least : 1 / Math.sqrt(weights) };
}

/** True rests in order; of a rest between two cycles the longer look, which the next cycle has. */
function trueRests(cycles: readonly Cycle[], closing: Rest | undefined): Rest[] {
  const found: Rest[] = [];
  cycles.forEach((cycle, i) => {
    if (cycle.zeroBeforeN !== undefined && cycle.restBefore !== undefined) found.push(cycle.restBefore);
    const next = cycles[i + 1];
    const after = next === undefined ? (closing ?? cycle.restAfter) : cycle.restAfter;
    const seenByNext = next?.zeroBeforeN !== undefined && next.restBefore !== undefined;
    if (cycle.zeroAfterN !== undefined && after !== undefined && !seenByNext) found.push(after);
  });
  return found;
}

function middleOf(cycle: Cycle): number {
  const window = cycle.settledWindow;
  return window === undefined ? (cycle.startIndex + cycle.endIndex) / 2 : (window.fromIndex + window.toIndex) / 2;
}

function zeroAt(rests: readonly Rest[], place: number): ZeroTaken {
  const after = rests.findIndex((r) => r.atIndex > place);
  const b = rests[after];
  const a = after < 0 ? rests.at(-1)! : (rests[after - 1] ?? b!);
  if (b === undefined || a === b) return a;
  const share = (place - a.atIndex) / (b.atIndex - a.atIndex);
  return {
    indicationN: a.indicationN + share * (b.indicationN - a.indicationN),
    standardN: Math.hypot((1 - share) * a.standardN, share * b.standardN),
  };
}

/** A straight line through the rests, weighted by their uncertainty, that explains them and changes beyond doubt. */
function driftsSteadily(rests: readonly Rest[]): boolean {
  if (rests.length < 3) return false;
  const origin = rests[0]!.atIndex;
  const span = rests.at(-1)!.atIndex - origin;
  let w = 0;
  let wx = 0;
  let wy = 0;
  const weight = (r: Rest) => 1 / Math.max(r.standardN, 1e-9) ** 2;
  for (const r of rests) {
    w += weight(r);
    wx += weight(r) * (r.atIndex - origin);
    wy += weight(r) * (r.indicationN - rests[0]!.indicationN);
  }
  let xx = 0;
  let xy = 0;
  for (const r of rests) {
    const x = r.atIndex - origin - wx / w;
    xx += weight(r) * x * x;
    xy += weight(r) * x * (r.indicationN - rests[0]!.indicationN - wy / w);
  }
  if (!(xx > 0)) return false;
  const slope = xy / xx;
  let squares = 0;
  for (const r of rests) {
    const left = r.indicationN - rests[0]!.indicationN - wy / w - slope * (r.atIndex - origin - wx / w);
    squares += left * left;
  }
  const change = Math.abs(slope) * span;
  const offLine = Math.sqrt(squares / (rests.length - 2));
  return change > (5 * span) / Math.sqrt(xx) && offLine < 0.2 * change;
}
