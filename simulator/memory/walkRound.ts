import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { Random } from "../physics/Random.ts";
import type { GaugeClock } from "./GaugeClock.ts";
import type { GaugeMemory } from "./GaugeMemory.ts";

/** A walk to be played into a memory, as it is told on the command line. */
export type WalkPlan = {
  readonly seed: number;
  readonly unit: ForceUnit;
  /** True local time from the first stop to the last, milliseconds since 1970 without a zone. */
  readonly fromMs: number;
  readonly toMs: number;
  /** What each stop holds with, newtons, in the order of the sheet; its location number is its place, from 1. */
  readonly forcesN: readonly number[];
};

/** Relative standard deviation between the takes of a visit, and of a visit from what was planned (common practice, no source). */
const TAKE_SCATTER = 0.003;
const VISIT_SCATTER = 0.004;
const TAKES = 3;
const BETWEEN_TAKES_MS = 28_000;
/** Visits of these places from 0 have a take with nothing clamped first, and a last one stored twice. */
const ZERO_AT = 0;
const TWICE_AT = 1;

/**
 * Walks a round with the slips a newcomer should meet once: two neighbours with each other's location number, one stop left
 * out, a reading stored with nothing clamped, and one stored twice. The memory is emptied first, as before a real round.
 * @returns  how many readings the memory holds now
 * @throws RangeError  a plan that cannot be walked
 */
export function walkRound(memory: GaugeMemory, clock: GaugeClock, plan: WalkPlan): number {
  checkPlan(plan);
  const { unit, forcesN, fromMs, toMs } = plan;
  const random = new Random(plan.seed);
  const swapped = widestPair(forcesN);
  const leftOut = swapped === TWICE_AT + 1 ? forcesN.length - 1 : TWICE_AT + 1;
  const route = [...forcesN.keys()].filter((stop) => stop !== leftOut);
  const pace = (toMs - fromMs) / route.length;
  memory.clear();
  for (const [i, stop] of route.entries()) {
    const location = 1 + (stop === swapped ? stop + 1 : stop === swapped + 1 ? stop - 1 : stop);
    const store = (forceN: number, atMs: number) =>
      memory.store({ forceN, unit, clockMs: clock.shows(atMs), location, held: false });
    const levelN = forcesN[stop]! * (1 + VISIT_SCATTER * random.normal());
    let atMs = fromMs + i * pace;
    if (i === ZERO_AT) store(0.0015 * levelN, atMs - BETWEEN_TAKES_MS);
    for (let take = 0; take < TAKES; take += 1) {
      const forceN = levelN * (1 + TAKE_SCATTER * random.normal());
      store(forceN, atMs);
      if (i === TWICE_AT && take === TAKES - 1) store(forceN, atMs + 2_000);
      atMs += BETWEEN_TAKES_MS;
    }
  }
  return memory.readings.length;
}

/** Neighbours that differ most, after the stops with other slips: taken for each other, they can be told by their forces. */
function widestPair(forcesN: readonly number[]): number {
  const from = TWICE_AT + 1;
  const apart = (i: number) => Math.abs(Math.log(forcesN[i]! / forcesN[i + 1]!));
  let widest = from;
  for (let i = from; i + 1 < forcesN.length; i += 1) if (apart(i) > apart(widest)) widest = i;
  return widest;
}

function checkPlan({ forcesN, fromMs, toMs }: WalkPlan): void {
  if (forcesN.length < 5 || !forcesN.every((forceN) => forceN > 0))
    throw new RangeError("a walk has at least five stops, each with a force above zero");
  if (!(toMs - fromMs >= forcesN.length * 2 * 60_000)) throw new RangeError("a walk takes at least two minutes a stop");
}
