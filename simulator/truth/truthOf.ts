import type { CycleFlag } from "../../app/cycle/Cycle.ts";
import type { ReadingState } from "../../app/gauge/ReadingSink.ts";
import { median } from "../../app/numerics/median.ts";
import { arrivalOf, type Clamping, forceAt, ringPeriodOf, riseAt } from "./clamping.ts";
import type { Plan } from "./drawStream.ts";
import type { TruthCycle } from "./TruthStream.ts";

type State = ReadingState | "rejected";

type Looked = {
  readonly plan: Plan;
  /** Net force without noise at each reading. */
  readonly clean: Float64Array;
  readonly forcesN: Float64Array;
  readonly states: readonly State[] | undefined;
};

/** What is true of each clamping as the gauge saw it. */
export function truthOf(
  plan: Plan,
  clean: Float64Array,
  spiked: readonly number[],
  forcesN: Float64Array,
  states: readonly State[] | undefined,
): TruthCycle[] {
  const look: Looked = { plan, clean, forcesN, states };
  return plan.clampings
    .map(({ atS, clamping }, k) =>
      oneTruth(look, clamping, atS - plan.fromS, (plan.clampings[k + 1]?.atS ?? plan.toS) - plan.fromS, spiked),
    )
    .filter((truth) => truth !== undefined);
}

function oneTruth(
  look: Looked,
  c: Clamping,
  atS: number,
  nextS: number,
  spiked: readonly number[],
): TruthCycle | undefined {
  const { plan } = look;
  const lengthS = plan.toS - plan.fromS;
  const arrivalS = atS + arrivalOf(c.rise);
  const releaseS = arrivalS + c.holdS;
  if (releaseS < 0 || atS > lengthS) return undefined;
  const startS = Math.max(0, atS);
  const endS = Math.min(
    lengthS - 1 / plan.rateHz,
    plan.condition.held ? resetTime(atS, nextS) : returnTime(look, c, atS, releaseS, nextS),
  );
  const cut = atS < 0 || releaseS > lengthS;
  const flags = new Set<CycleFlag>();
  const free = new Set<CycleFlag>();
  if (cut) flags.add("cut");
  if (cut) free.add("coarse").add("short");
  const holdFrom = Math.max(0, arrivalS);
  const holdTo = Math.min(lengthS, releaseS);
  const window = windowOf(look, holdFrom, holdTo, flags, free);
  coarse(plan, c, flags, free);
  slip(plan, c, holdTo - holdFrom, flags, free);
  if (c.release.toN > 0 && releaseS < lengthS) released(plan, c, flags, free);
  if (spiked.some((i) => i / plan.rateHz > startS && i / plan.rateHz < endS)) flags.add("spike");
  if (spiked.some((i) => nearEdge(plan, i, [startS, arrivalS, releaseS, endS]))) free.add("spike");
  const over = overload(look, startS, endS, window, flags, free);
  if (plan.condition.held) {
    flags.add("peakHold");
    for (const flag of ["short", "coarse", "unstable"] as const) flags.delete(flag);
    free.clear();
  }
  if (c.levelN > 0.985 * plan.capacityN) free.add("overload"); // readings may rest on the capacity itself
  const settledN =
    plan.condition.held || over || window.length === 0 ? undefined : median(window.map((i) => look.clean[i]!));
  const middle = window.length > 0 ? window[window.length >> 1]! / plan.rateHz : (holdFrom + holdTo) / 2;
  return {
    startS,
    endS,
    peakN:
      over || flags.has("overload") || free.has("overload") || flags.has("coarse")
        ? undefined
        : greatest(c, atS, startS, endS),
    settledN,
    settledErrorN: medianError(plan, Math.max(1, window.length)),
    zeroN: plan.offsetN + plan.driftNPerS * middle,
    flags,
    free,
    sure: holdTo - holdFrom >= 0.5 && (holdTo - holdFrom) * plan.rateHz >= 8 && c.levelN >= 0.05 * plan.capacityN,
  };
}

/** Readings the settled force is to be taken from, by the rule of the design. */
function windowOf(look: Looked, from: number, to: number, flags: Set<CycleFlag>, free: Set<CycleFlag>): number[] {
  const { rateHz } = look.plan;
  const readings = (a: number, b: number) => {
    const found: number[] = [];
    for (let i = Math.ceil(a * rateHz); i <= Math.min(b * rateHz, look.clean.length - 1); i += 1)
      if ((look.states?.[i] ?? "live") !== "rejected") found.push(i);
    return found;
  };
  const full = readings(from + 1, Math.min(from + 3, to));
  const lasts = to >= from + 3;
  // Near the limits the detector may see the arrival or the release a reading earlier or later.
  if (Math.abs(to - from - 3) < 0.15 + 2 / rateHz || (!lasts && Math.abs(full.length - 8) <= 2 + 0.1 * rateHz))
    free.add("short");
  if (lasts || full.length >= 8) return full;
  flags.add("short");
  return readings(from + (to - from) / 2, to);
}

function medianError(plan: Plan, n: number): number {
  // Signs of normal noise of the first order; (2 / pi) asin r^k, summed.
  let memory = 1;
  for (let k = 1; k < 60; k += 1) memory += (4 / Math.PI) * Math.asin(plan.memory ** k);
  const scatter = Math.hypot(plan.noiseN, plan.stepN / Math.sqrt(12));
  return Math.sqrt((Math.PI / 2) * (Math.min(memory, n) / n)) * scatter;
}

/** When the held maximum is cleared: a second before the next clamping, or in the last quarter. */
export function resetTime(atS: number, nextS: number): number {
  return nextS - Math.min(1, (nextS - atS) / 4);
}

/** First moment at which the force is back within the noise, or 1 % of its fall. */
function returnTime(look: Looked, c: Clamping, atS: number, releaseS: number, nextS: number): number {
  const { plan } = look;
  const scatter = Math.hypot(plan.noiseN, plan.stepN / Math.sqrt(12));
  const fall = forceAt(c, releaseS - atS) - c.release.toN;
  const limit = c.release.toN + Math.max(4 * scatter, 1.5 * plan.stepN, 0.01 * fall);
  let t = releaseS;
  while (t < nextS && forceAt(c, t - atS) > limit) t += 0.0005;
  return t;
}

function greatest(c: Clamping, atS: number, startS: number, endS: number): number {
  let top = 0;
  const arrival = arrivalOf(c.rise);
  const fine = Math.min(2, endS - startS);
  for (let k = 0; k <= 8000; k += 1) top = Math.max(top, forceAt(c, startS - atS + (fine * k) / 8000));
  for (let k = 0; k <= 4000; k += 1) top = Math.max(top, forceAt(c, Math.max(0, arrival) + (c.holdS * k) / 4000));
  return top;
}

function coarse(plan: Plan, c: Clamping, flags: Set<CycleFlag>, free: Set<CycleFlag>): void {
  const period = ringPeriodOf(c.rise);
  const riseReadings = plan.rateHz * riseSpan(c);
  if (period === undefined) {
    if (riseReadings < 5) free.add("coarse");
    return;
  }
  const readings = period * plan.rateHz;
  let top = 0;
  for (let k = 0; k < 2000; k += 1) top = Math.max(top, riseAt(c.rise, (k * 3 * period) / 2000));
  const swing = (top - 1) * (c.levelN - c.fromN);
  const seen = swing > Math.max(14 * plan.noiseN, 4 * plan.stepN, 0.02 * c.levelN);
  if (readings < 14 && (seen || riseReadings < 2)) flags.add("coarse");
  else if (readings < 19 || (!seen && riseReadings < 5)) free.add("coarse");
}

/** From 10 % to 90 %, seconds. */
function riseSpan(c: Clamping): number {
  const arrival = arrivalOf(c.rise);
  let low = 0;
  let high = arrival;
  for (let k = 0; k <= 4000; k += 1) {
    const t = (arrival * k) / 4000;
    if (riseAt(c.rise, t) < 0.1) low = t;
    if (riseAt(c.rise, t) < 0.9) high = t;
  }
  return high - low;
}

function slip(plan: Plan, c: Clamping, holdS: number, flags: Set<CycleFlag>, free: Set<CycleFlag>): void {
  if (c.slip === undefined) return;
  const readings = Math.max(8, 0.25 * plan.rateHz);
  const error = plan.noiseN * Math.sqrt((2 / readings) * ((1 + plan.memory) / (1 - plan.memory)));
  const room = Math.min(c.slip.atS, holdS - c.slip.atS) * plan.rateHz;
  const clear = Math.abs(c.slip.share) * c.levelN > 8 * error + 2 * plan.stepN && room >= 5;
  (clear ? flags : free).add("unstable");
}

function released(plan: Plan, c: Clamping, flags: Set<CycleFlag>, free: Set<CycleFlag>): void {
  const residual = c.release.toN;
  (residual > Math.max(0.02 * c.levelN, 6 * plan.noiseN, 4 * plan.stepN) ? flags : free).add("notReleased");
}

function nearEdge(plan: Plan, i: number, edgesS: readonly number[]): boolean {
  return edgesS.some((s) => Math.abs(i / plan.rateHz - s) < Math.max(0.32, 5 / plan.rateHz));
}

/** Whether overload hides the settled force. */
function overload(
  look: Looked,
  startS: number,
  endS: number,
  window: readonly number[],
  flags: Set<CycleFlag>,
  free: Set<CycleFlag>,
): boolean {
  const { plan } = look;
  const isOver = (i: number) =>
    look.states?.[i] === "overload" || (plan.condition.clipped === true && look.forcesN[i]! >= plan.capacityN);
  let over = 0;
  let run = 0;
  let longest = 0;
  for (let i = Math.ceil(startS * plan.rateHz); i <= endS * plan.rateHz; i += 1) {
    run = isOver(i) ? run + 1 : 0;
    over += isOver(i) ? 1 : 0;
    longest = Math.max(longest, run);
  }
  if (over === 0) return false;
  if (plan.condition.clipped && longest < 5) free.add("overload");
  else flags.add("overload");
  for (const flag of ["short", "coarse", "unstable"] as const) free.add(flag);
  return window.some(isOver);
}
