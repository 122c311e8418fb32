import { taken } from "../numerics/taken.ts";
import { findSteps, type Step } from "./step/findSteps.ts";
import { strayPoints } from "./step/strayPoints.ts";

/** A piece of a history in which nothing was done and no clear step lies. */
export type Stretch = {
  /** Positions from 0; `to` is the first one after it. */
  readonly from: number;
  readonly to: number;
  readonly startedBy: "first" | "service" | "step";
};

export type CutSeries = {
  /** Positions of checks that stood off alone, the next one back. */
  readonly strays: readonly number[];
  /** Steps found between services, the unclear ones too; positions from 0. */
  readonly steps: readonly Step[];
  readonly stretches: readonly Stretch[];
};

/**
 * Cuts a history at its services and, between them, at the clear steps. Strays are left out of the search for steps
 * and stay in the stretch they lie in.
 * @param x  ascending, each finite
 * @param y  as many as `x`
 * @param starts  first positions after a service, ascending; 0 may be among them
 */
export function cutSeries(x: Float64Array, y: Float64Array, starts: readonly number[]): CutSeries {
  const n = x.length;
  const edges = [0, ...starts.filter((s) => s > 0 && s < n), n];
  const strays: number[] = [];
  const steps: Step[] = [];
  const stretches: Stretch[] = [];
  for (let k = 0; k + 1 < edges.length; k += 1) {
    const from = edges[k]!;
    const to = edges[k + 1]!;
    if (from === to) continue;
    const alone = strayPoints(y.subarray(from, to)).map((i) => from + i);
    const found = stepsBetween(x, y, from, to, alone);
    strays.push(...alone);
    steps.push(...found);
    const cuts = [from, ...found.filter((s) => s.clear).map((s) => s.firstAfter), to];
    for (let c = 0; c + 1 < cuts.length; c += 1) {
      const startedBy = c > 0 ? "step" : k > 0 || starts.includes(0) ? "service" : "first";
      stretches.push({ from: cuts[c]!, to: cuts[c + 1]!, startedBy });
    }
  }
  return { strays, steps, stretches };
}

function stepsBetween(x: Float64Array, y: Float64Array, from: number, to: number, strays: readonly number[]): Step[] {
  if (strays.length === 0)
    return findSteps(x.subarray(from, to), y.subarray(from, to)).map((s) => moved(s, (i) => from + i));
  const kept: number[] = [];
  for (let i = from; i < to; i += 1) if (!strays.includes(i)) kept.push(i);
  return findSteps(taken(x, kept), taken(y, kept)).map((s) => moved(s, (i) => kept[i]!));
}

function moved(step: Step, place: (i: number) => number): Step {
  return { ...step, lastBefore: place(step.lastBefore), firstAfter: place(step.firstAfter) };
}
