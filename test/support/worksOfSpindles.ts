import type { History } from "../../app/trend/History.ts";
import { DAY_MS, FIRST_MS } from "./spindleHistory.ts";

export type WorksOptions = {
  readonly spindles: number;
  readonly checks: number;
  readonly gauges?: number;
  readonly adapters?: number;
  /** Id of the gauge or adapter that goes off, from which round on, and by how much (a fraction). */
  readonly off?: string;
  readonly since?: number;
  readonly shift?: number;
  /** Scatter between checks, a fraction. */
  readonly sigma?: number;
  /** Share of the spindles that lose 5 % in one step at a random round. */
  readonly broken?: number;
};

/**
 * A made-up works: levels from 15 to 30 kN, each spindle losing 0.5 to 2.5 % a year, rounds of some days every ninety
 * days. Spindle s is measured with gauge s mod gauges and, within a gauge, adapters in turn.
 */
export function worksOfSpindles(normal: () => number, uniform: () => number, options: WorksOptions): History[] {
  const { spindles, checks, gauges = 1, adapters = 1, off, since = checks - 1, shift = -0.03, sigma = 0.01 } = options;
  return Array.from({ length: spindles }, (_, s) => {
    const level = 15_000 + 15_000 * uniform();
    const perYear = -(0.005 + 0.02 * uniform());
    const broken = uniform() < (options.broken ?? 0) ? Math.floor(uniform() * checks) : Number.POSITIVE_INFINITY;
    const gaugeId = `gauge-${s % gauges}`;
    const adapterId = `adapter-${Math.floor(s / gauges) % adapters}`;
    const points = Array.from({ length: checks }, (_, c) => {
      const days = c * 90 + Math.floor(s / 4) + 5 * uniform();
      const own = level * (1 + (perYear * days) / 365.25) * (1 + sigma * normal()) * (c >= broken ? 0.95 : 1);
      const isOff = (off === gaugeId || off === adapterId) && c >= since;
      return {
        checkId: `check-${s}-${c}`,
        atMs: FIRST_MS + days * DAY_MS,
        valueN: own * (isOff ? 1 + shift : 1),
        verdict: "good" as const,
        gaugeId,
        adapterId,
      };
    });
    return { spindleId: `spindle-${s}`, points, events: [], limits: {} };
  });
}
