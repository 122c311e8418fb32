import { median } from "../numerics/median.ts";
import { studentCdf } from "../numerics/studentCdf.ts";
import { type Contrast, contrastsAt } from "./fleet/contrastsAt.ts";
import { type Factor, factorsOf } from "./fleet/factorsOf.ts";
import { type FleetTracks, fleetTracks } from "./fleet/fleetTracks.ts";
import type { CoursePoint, History } from "./History.ts";

/** Spindles that moved together since a date, and the gauge or adapter they have in common. */
export type SharedMove = {
  readonly by: "gauge" | "adapter";
  readonly id: string;
  /** Other gauges and adapters that these spindles have in common too, so that the figures cannot tell them apart. */
  readonly or: readonly { readonly by: "gauge" | "adapter"; readonly id: string }[];
  /** Time of the first check that shows it. */
  readonly sinceMs: number;
  /** Spindles compared, and those of them that moved that way. */
  readonly spindles: number;
  readonly spindleIds: readonly string[];
  /** Median move as a fraction, down is negative. */
  readonly shift: number;
  /** Chance of it where nothing is shared, every gauge, adapter and round counted. */
  readonly p: number;
};

export type CommonModeOptions = {
  /** How far back dates are looked at, days before the last check. */
  readonly lookBackDays?: number;
  /** Fewest spindles with checks before and after. */
  readonly leastSpindles?: number;
};

/**
 * Which gauge or adapter is off: a fall seen on every spindle measured with it since one date is its own, not the
 * spindles'. For each gauge, adapter and date, each spindle's checks after the date are compared with what its checks
 * before it foretell, in standard deviations; the sum over the spindles is the statistic, each spindle's share cut
 * off so that one broken spring blames nobody. One is named when nearly all of its spindles moved the same way, by
 * more than chance gives once in a hundred works; when those measured without it did not move along; and, for a
 * gauge, when the move is not one adapter's alone. The strongest is named first and taken out before the next is
 * looked for: a gauge gone off would else blame every adapter used with it.
 * @returns  strongest first
 */
export function commonModes(histories: readonly History<CoursePoint>[], options: CommonModeOptions = {}): SharedMove[] {
  const { lookBackDays = 400, leastSpindles = 5 } = options;
  const tracks = fleetTracks(histories);
  if (tracks === undefined) return [];
  const factors = factorsOf(tracks, lookBackDays);
  const found: SharedMove[] = [];
  while (found.length < MOST) {
    const best = strongest(tracks, factors, leastSpindles, found);
    if (best === undefined) break;
    found.push(best);
    takeOut(tracks, best);
  }
  return found;
}

/** More than this at once is no longer a gauge gone off. */
const MOST = 8;
const RARE = 0.05;
/** Share of the spindles that must have moved the same way, each by more than half a standard deviation. */
const NEARLY_ALL = 0.8;
/** What the statistic must still be when the spindles that moved most are left out: a few broken springs move no gauge. */
const CALM = 2;
const LEFT_OUT = 0.3;
const CUT = 4;
const TWO_ROUNDS_MS = 100 * 86_400_000;

type Found = { readonly score: number; readonly move: SharedMove };

function strongest(
  fleet: FleetTracks,
  factors: readonly Factor[],
  least: number,
  named: readonly SharedMove[],
): SharedMove | undefined {
  // The dates of one round tell nearly the same: a round counts as two tests, whatever the number of its dates.
  const tests = factors.reduce((sum, factor) => sum + factor.rounds, 0);
  const freedom = Math.max(1, fleet.degreesOfFreedom);
  let best: Found | undefined;
  for (const factor of factors) {
    for (const date of factor.dates) {
      const contrasts = contrastsAt(fleet, factor, date);
      const score = scoreOf(contrasts);
      if (contrasts.length < least || Math.abs(score) <= (best?.score ?? 0)) continue;
      const p = Math.min(1, 2 * tests * studentCdf(-Math.abs(score), freedom));
      if (p > RARE || !isShared(fleet, factor, date, contrasts)) continue;
      const move = moveOf(factor, date, contrasts, p);
      if (!named.some((n) => isExplainedBy(move, n))) best = { score: Math.abs(score), move };
    }
  }
  if (best === undefined) return undefined;
  return { ...best.move, or: alsoPossible(fleet, factors, best.move) };
}

function scoreOf(contrasts: readonly Contrast[]): number {
  let sum = 0;
  let shared = 0;
  for (const contrast of contrasts) {
    sum += Math.max(-CUT, Math.min(CUT, contrast.z));
    shared += contrast.shared;
  }
  // Independent errors add up as squares, the error of the usual slope as it stands.
  return contrasts.length === 0 ? 0 : sum / Math.sqrt(contrasts.length + shared * shared);
}

function isShared(fleet: FleetTracks, factor: Factor, date: number, contrasts: readonly Contrast[]): boolean {
  const sign = Math.sign(scoreOf(contrasts));
  if (contrasts.filter((c) => c.z * sign > 0.5).length < NEARLY_ALL * contrasts.length) return false;
  if (scoreOf(calmest(contrasts, sign)) * sign < CALM) return false;
  const shift = medianShift(contrasts);
  if (movedAlong(contrastsAt(fleet, factor, date, true), shift, 3)) return false;
  if (factor.by === "adapter") return true;
  // Not one adapter's alone: the gauge's other spindles moved too.
  return [...new Set(contrasts.map((c) => c.adapter))].every((adapter) => {
    const rest = contrasts.filter((c) => c.adapter !== adapter);
    return rest.length === 0 || movedAlong(rest, shift, 1);
  });
}

function calmest(contrasts: readonly Contrast[], sign: number): readonly Contrast[] {
  const left = Math.ceil(LEFT_OUT * contrasts.length);
  return [...contrasts].sort((a, b) => (a.z - b.z) * sign).slice(0, contrasts.length - left);
}

/** Whether these moved by at least half of the shift, and by more than chance readily gives. */
function movedAlong(contrasts: readonly Contrast[], shift: number, least: number): boolean {
  if (contrasts.length < least) return false;
  return scoreOf(contrasts) * Math.sign(shift) > 2 && medianShift(contrasts) / shift > 0.5;
}

const medianShift = (contrasts: readonly Contrast[]) => median(contrasts.map((c) => c.shift));

function moveOf(factor: Factor, date: number, contrasts: readonly Contrast[], p: number): SharedMove {
  const shift = medianShift(contrasts);
  const moved = contrasts.filter((c) => c.z * shift > 0);
  return {
    by: factor.by,
    id: factor.id,
    or: [],
    sinceMs: date,
    spindles: contrasts.length,
    spindleIds: moved.map((c) => c.spindleId),
    shift,
    p,
  };
}

/** The same spindles, the same way, at about the same time: the first name has taken it. */
function isExplainedBy(move: SharedMove, named: SharedMove): boolean {
  if (move.shift * named.shift < 0 || Math.abs(move.sinceMs - named.sinceMs) > TWO_ROUNDS_MS) return false;
  return 2 * move.spindleIds.filter((id) => named.spindleIds.includes(id)).length > move.spindleIds.length;
}

/** Gauges and adapters that were used on just these spindles. */
function alsoPossible(fleet: FleetTracks, factors: readonly Factor[], move: SharedMove): SharedMove["or"] {
  const spindles = (factor: Factor) => new Set(contrastsAt(fleet, factor, move.sinceMs).map((c) => c.spindleId));
  const own = factors.find((f) => f.by === move.by && f.id === move.id);
  const wanted = own === undefined ? new Set<string>() : spindles(own);
  return factors
    .filter((f) => f !== own)
    .filter((f) => {
      const others = spindles(f);
      return others.size === wanted.size && [...others].every((id) => wanted.has(id));
    })
    .map(({ by, id }) => ({ by, id }));
}

/** Takes a named move out of the figures, so that what it explains is not explained again. */
function takeOut(fleet: FleetTracks, move: SharedMove): void {
  const isGauge = move.by === "gauge";
  const place = (isGauge ? fleet.gaugeIds : fleet.adapterIds).indexOf(move.id);
  for (const track of fleet.tracks) {
    const places = isGauge ? track.gauges : track.adapters;
    for (let i = 0; i < track.t.length; i += 1) {
      if (places[i] === place && track.t[i]! >= move.sinceMs) track.r[i]! -= move.shift;
    }
  }
}
