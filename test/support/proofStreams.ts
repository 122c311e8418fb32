import type { TimedStream } from "../../app/proof/reference/TimedStream.ts";

/** Uniform numbers from 0 to 1 from a seed (mulberry32), the same on every machine. */
export function seededUniform(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A standard normal number from two uniform ones (Box and Muller). */
export const normalFrom = (uniform: () => number) =>
  Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());

export type ProofStreams = {
  readonly reference: TimedStream;
  readonly gauge: TimedStream;
  /** What must be added to the gauge's times: the clocks' true offset. */
  readonly offsetS: number;
  readonly forceAt: (tS: number) => number;
  /** Newtons a second the load moves at a time. */
  readonly speedAt: (tS: number) => number;
  readonly steps: number;
};

/**
 * Ten rising loads to about 30 kN and back to zero, by hand pump: loads 2 % off, ramps of 1 to 4 s, holds of 8 to 15 s
 * with a load that settles by 0.02 % after each ramp. Reference at 50 readings a second, gauge at 10, each stamped up
 * to 50 ms late; clocks up to 2 s apart. Noise 0.3 N and 0.5 N.
 */
export function proofStreams(seed: number): ProofStreams {
  const uniform = seededUniform(seed);
  const knots: { t: number; force: number; rampS: number }[] = [];
  let t = 3 + 3 * uniform();
  for (let i = 1; i <= 11; i += 1) {
    const rampS = 1 + 3 * uniform();
    knots.push({ t, force: i === 11 ? 0 : 3000 * i * (0.98 + 0.04 * uniform()), rampS });
    t += rampS + 8 + 7 * uniform();
  }
  const endS = t + 5;
  const forceAt = (at: number) => {
    const i = knots.findLastIndex((k) => k.t <= at);
    if (i < 0) return 0;
    const { t: start, force, rampS } = knots[i]!;
    const from = knots[i - 1]?.force ?? 0;
    if (at < start + rampS) return from + ((force - from) * (at - start)) / rampS;
    return force * (1 - 2e-4 * (1 - Math.exp(-(at - start - rampS) / 1.5)));
  };
  const offsetS = 4 * uniform() - 2;
  const stream = (rateHz: number, clockS: number, read: (force: number) => number): TimedStream => {
    const count = Math.floor(endS * rateHz);
    const tS = Array.from({ length: count }, (_, i) => i / rateHz + clockS + 0.05 * uniform());
    const value = Array.from({ length: count }, (_, i) => read(forceAt(i / rateHz)));
    return { tS: Float64Array.from(tS).sort(), value };
  };
  return {
    reference: stream(50, 0, (f) => f + 0.3 * normalFrom(uniform)),
    gauge: stream(10, -offsetS, (f) => f + 0.5 * normalFrom(uniform)),
    offsetS,
    forceAt,
    speedAt: (at) => Math.abs(forceAt(at + 0.005) - forceAt(at - 0.005)) / 0.01,
    steps: 10,
  };
}
