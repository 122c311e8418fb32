import type { SeededRandom } from "./SeededRandom.ts";

/** One gauge, adapter and spindle as they truly are; shares are relative to the force. */
export type Place = {
  readonly forceN: number;
  /** Standard deviation from clamping to clamping. */
  readonly scatterN: number;
  readonly resolutionN: number;
  /** Standard deviation of one quiet reading at rest. */
  readonly restN: number;
  /** Half the change of zero over the series that nobody could share out. */
  readonly halfChangeN: number;
  readonly proof: number;
  readonly proofDegrees: number;
  readonly adapter: number;
  readonly temperature: number;
  readonly drift: number;
  readonly misalignment: number;
};

/**
 * Anything from a fine gauge on a clean spindle to a coarse one on a dirty one, each figure drawn for itself; the gauge
 * resolves a thousandth to a five-thousandth of a capacity that the force uses by a fifth to four fifths.
 */
export function randomPlace(random: SeededRandom): Place {
  const forceN = random.logUniform(5_000, 80_000);
  const capacityN = forceN / (0.2 + 0.6 * random.unit());
  return {
    forceN,
    scatterN: random.logUniform(10, 400),
    resolutionN: capacityN / [1000, 2000, 5000][random.whole(0, 2)]!,
    restN: random.logUniform(0.5, 50),
    halfChangeN: random.logUniform(0.5, 60),
    proof: random.logUniform(0.0003, 0.005),
    proofDegrees: random.whole(6, 40),
    adapter: random.logUniform(0.0003, 0.005),
    temperature: random.logUniform(0.0001, 0.005),
    drift: random.logUniform(0.0001, 0.004),
    misalignment: random.logUniform(0.001, 0.006),
  };
}
