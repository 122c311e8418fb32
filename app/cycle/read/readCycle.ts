import type { CycleFlag } from "../Cycle.ts";
import type { Trace } from "../phase/Trace.ts";
import { findOnset, findReturn, firstAbove } from "./cycleEdges.ts";
import { type Ground, readingsIn } from "./Ground.ts";
import { groundOf } from "./groundOf.ts";
import { findHold, type HoldBounds } from "./holdBounds.ts";
import { stepsInHold } from "./holdSteps.ts";
import { peakForce } from "./peakForce.ts";
import { ringPeriod } from "./ringPeriod.ts";
import { type Settled, settle } from "./settle.ts";
import { findSpikes } from "./spikes.ts";
import { scatterOfSteps } from "./stretch.ts";

/** What the detector knows of a stretch that may be a clamping. */
export type Stretch = {
  readonly trace: Trace;
  /** First reading outside the zero band, and one past the last that belongs to the stretch. */
  readonly onset: number;
  readonly end: number;
  readonly zeroN: number;
  /** Indication the rise starts from. */
  readonly baseN: number;
  readonly sigmaN: number;
  readonly stepN: number;
  /** Residuals of the rests so far. */
  readonly restNoise: readonly Float64Array[];
  readonly restMemory: number;
  /** Level it came down to; undefined when the readings end inside the hold. */
  readonly fellToN: number | undefined;
  readonly capacityN: number | undefined;
  /** Net force under which nothing is a clamping. */
  readonly leastN: number;
  /** What was found in readings that are no longer kept. */
  readonly foldedPeakN: number | undefined;
  readonly foldedFlags: ReadonlySet<CycleFlag>;
};

/** A clamping as indicated: the zero is not taken off yet. */
export type CycleFound = {
  readonly start: number;
  readonly end: number;
  readonly peakIndicationN: number;
  readonly peakIndex: number;
  readonly levelN: number;
  readonly hold: HoldBounds | undefined;
  readonly settled: Settled | undefined;
  readonly riseTimeS: number | undefined;
  readonly flags: ReadonlySet<CycleFlag>;
};

/** Shortest clamping, measured at half its force. Handling knocks end within 0.25 s. */
const leastSeconds = 0.36;
const leastReadings = 5;
const leastReadingsUntimed = 8;
/** What stands out of its own noise by less is noise. */
const leastScatters = 8;

/** Reads a stretch of force as a clamping; undefined when it is a knock, a spike or too little to be sure. */
export function readCycle(s: Stretch): CycleFound | undefined {
  const flags = new Set<CycleFlag>(s.foldedFlags);
  const ground = groundOf(s, flags);
  const held = findHold(ground, s.fellToN !== undefined);
  if (held === undefined || held.levelN < s.leastN || !lastsLongEnough(ground, held.levelN)) return undefined;
  const sigmaN = Math.max(s.sigmaN, holdNoise(ground, held));
  if (held.levelN < leastScatters * sigmaN) return undefined;
  const g: Ground = { ...ground, sigmaN };
  const spikes = findSpikes(g.w, g.onset, g.end, sigmaN, s.stepN);
  const hold = spikes.length === 0 ? held : withoutSpikes(s, g, held, spikes, flags);
  return figures(s, g, hold, flags);
}

/** The end of a slow rise is known to some readings only; none of it is a step of the hold. */
function surelyArrived({ arrival, before, beforeError, holdEnd }: HoldBounds): number {
  return Math.min(holdEnd, arrival + Math.ceil(Math.max(0, -before) + 3 * beforeError));
}

/**
 * Takes the spikes out, and looks for the hold again: one beside an edge may have moved it. Where the rate cannot
 * follow the ring, single readings just after the rise are its crests as far as a crest can reach.
 */
function withoutSpikes(
  s: Stretch,
  g: Ground,
  held: HoldBounds,
  spikes: readonly number[],
  flags: Set<CycleFlag>,
): HoldBounds {
  const taken = spikes.map((i) => ({ i, value: g.w[i]!, shape: g.shape[i]! }));
  for (const { i } of taken) {
    g.w[i] = Number.NaN;
    g.shape[i] = Number.NaN;
  }
  const hold = findHold(g, s.fellToN !== undefined) ?? held;
  const ringsUntil = hold.arrival + readingsIn(g.trace, 0.3, 4);
  const highest = g.zeroN + 1.4 * hold.levelN;
  const crests = isCoarse(g, hold, hold.levelN)
    ? taken.filter(({ i, value }) => i < ringsUntil && value > g.zeroN + 0.6 * hold.levelN && value < highest)
    : [];
  for (const { i, value, shape } of crests) {
    g.w[i] = value;
    g.shape[i] = shape;
  }
  if (crests.length < taken.length) flags.add("spike");
  return hold;
}

function figures(s: Stretch, g: Ground, hold: HoldBounds, flags: Set<CycleFlag>): CycleFound | undefined {
  const isHeld = mostlyHeld(s.trace, hold);
  const slips = !isHeld && stepsInHold(g, surelyArrived(hold), hold.holdEnd, hold.levelN, s.restMemory);
  const settled = isHeld ? undefined : settle(g, hold, slips, s.restNoise);
  const levelAt = settled?.indication ?? g.zeroN + hold.levelN;
  const levelN = levelAt - g.zeroN;
  if (!s.trace.timed && !isHeld && !holdsAt(g, levelN)) return undefined;
  const peak = peakForce(g, levelAt) ?? { indication: s.capacityN ?? g.zeroN, index: hold.arrival };
  if (isHeld) flags.add("peakHold");
  else {
    if (settled?.short) flags.add("short");
    if (isCoarse(g, hold, levelN)) flags.add("coarse");
    if (slips) flags.add("unstable");
  }
  return {
    start: findOnset(g, levelN, hold.arrival, isHeld),
    end: s.fellToN === undefined ? g.end - 1 : findReturn(g, hold.holdEnd, s.fellToN, levelAt),
    peakIndicationN: Math.max(peak.indication, s.foldedPeakN ?? Number.NEGATIVE_INFINITY),
    peakIndex: s.trace.placeOf(peak.index),
    levelN,
    hold,
    settled,
    riseTimeS: riseTime(g, hold, levelN),
    flags,
  };
}

/** Wide enough at half its force. */
function lastsLongEnough(g: Ground, levelN: number): boolean {
  const half = g.zeroN + 0.5 * levelN;
  const high = (i: number) => g.shape[i]! > half;
  let first = g.onset;
  while (first < g.end && !high(first)) first += 1;
  let last = g.end - 1;
  while (last > first && !high(last)) last -= 1;
  let readings = 0;
  for (let i = first; i <= last; i += 1) if (high(i)) readings += 1;
  if (!g.trace.timed) return readings >= leastReadingsUntimed;
  return readings >= leastReadings && g.trace.secondsBetween(first, last) >= leastSeconds;
}

/** Scatter inside the hold: a gauge under load may be noisier than at rest. */
function holdNoise(g: Ground, hold: HoldBounds): number {
  const from = hold.arrival + ((hold.holdEnd - hold.arrival) >> 1);
  return scatterOfSteps(g.w, from, hold.holdEnd + 1);
}

/**
 * Without a rate a knock cannot be told by its length. A hold spends much of its time at its force, or took much longer
 * to rise than to fall; the swing of a knock does neither.
 */
function holdsAt(g: Ground, levelN: number): boolean {
  const at = g.zeroN + 0.9 * levelN;
  const up = firstAbove(g, g.onset, g.end, at);
  let down = g.end - 1;
  while (down > up && !(g.shape[down]! > at)) down -= 1;
  const low = firstAbove(g, g.onset, g.end, g.zeroN + 0.1 * levelN);
  let end = g.end - 1;
  while (end > down && !(g.shape[end]! > g.zeroN + 0.1 * levelN)) end -= 1;
  return down - up >= 0.4 * (end - low) || up - low > 4 * (end - down + 1);
}

function mostlyHeld(trace: Trace, hold: HoldBounds): boolean {
  if (trace.held === undefined) return false;
  let held = 0;
  let live = 0;
  for (let i = hold.arrival; i <= hold.holdEnd; i += 1) {
    if (trace.held[i] === 1) held += 1;
    else if (Number.isFinite(trace.values[i]!)) live += 1;
  }
  return held > live;
}

/** A rate under sixteen readings a ring period. Where no ring is seen, a rise within three readings could hide one. */
function isCoarse(g: Ground, hold: HoldBounds, levelN: number): boolean {
  const period = ringPeriod(g, hold.arrival, hold.holdEnd, levelN);
  return period.readings < 16 || (!period.sure && riseReadings(g, hold, levelN) < 3);
}

/** From 10 % to 90 % of the force that arrived, in readings, between them by straight lines. */
function riseReadings(g: Ground, hold: HoldBounds, levelN: number): number {
  const [low, high] = risePoints(g, hold, levelN);
  return high - low;
}

function riseTime(g: Ground, hold: HoldBounds, levelN: number): number | undefined {
  if (!g.trace.timed) return undefined;
  const [low, high] = risePoints(g, hold, levelN);
  const at = (x: number) => {
    const whole = Math.floor(x);
    const t = g.trace.timeOf(whole)!;
    return t + (x - whole) * ((g.trace.timeOf(Math.min(whole + 1, g.trace.length - 1)) ?? t) - t);
  };
  return Math.max(0, at(high) - at(low));
}

function risePoints(g: Ground, hold: HoldBounds, levelN: number): [number, number] {
  const arrivedN = g.zeroN + levelN - g.baseN;
  const high = crossing(g, g.baseN + 0.9 * arrivedN, g.onset, hold.arrival, 1);
  const low = crossing(g, g.baseN + 0.1 * arrivedN, Math.floor(high) + 1, g.onset - 1, -1);
  return [Math.min(low, high), high];
}

/** Where the force passes `level` between two readings, looked for from `from` towards `to`. */
function crossing(g: Ground, level: number, from: number, to: number, direction: 1 | -1): number {
  for (let i = Math.max(from, g.first + 1); i !== to + direction && i > g.first; i += direction) {
    let before = i - 1;
    while (before > g.first && Number.isNaN(g.shape[before]!)) before -= 1;
    const below = g.shape[before]!;
    const above = g.shape[i]!;
    if (below <= level && above > level) return before + ((i - before) * (level - below)) / (above - below);
  }
  return Math.max(0, direction === 1 ? to : from);
}
