import { SimulatedGauge } from "../gauge/SimulatedGauge.ts";
import type { Wear } from "./stories.ts";

export type SeriesOptions = {
  readonly seed: number;
  readonly capacityN: number;
  readonly nominalN: number;
  readonly wear: Wear;
  /** Indication over force at the taper: the gauge's own error and the adapter. */
  readonly gain: number;
  readonly clampings: number;
  readonly zeroN: number;
};

/** Readings a second of the demo gauges. */
export const RATE_HZ = 100;

/** What a gauge sends while somebody clamps and releases a few times; the ring is slow enough for the rate to follow. */
export function seriesLines({ seed, capacityN, nominalN, wear, gain, clampings, zeroN }: SeriesOptions): string {
  const { chip = 0, ...state } = wear;
  const gauge = new SimulatedGauge({
    seed,
    rateHz: RATE_HZ,
    format: "numberUnit",
    unit: "kN",
    capacityN,
    forceN: nominalN,
    decimals: 2,
    noiseN: Math.max(6, nominalN / 1_500),
    zeroN,
    gain: gain * (1 - chip),
    ringHz: 3,
  });
  // The gripper's usual friction is part of the nominal force.
  gauge.mechanism = { ...gauge.mechanism, springN: gauge.mechanism.springN * 1.012, ...state };
  const parts = [gauge.advance(2 * RATE_HZ)];
  for (let i = 0; i < clampings; i += 1) {
    gauge.clamp();
    parts.push(gauge.advance(4.2 * RATE_HZ));
    gauge.release();
    parts.push(gauge.advance(2.4 * RATE_HZ));
  }
  return Buffer.concat(parts).toString("latin1");
}
