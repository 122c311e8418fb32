import { alignStreams } from "../../app/proof/reference/alignStreams.ts";
import { takeSteps } from "../../app/proof/reference/takeSteps.ts";
import { proofStreams } from "./proofStreams.ts";

export type StreamTrial = {
  /** Error of the offset found, seconds; undefined when none was found. */
  readonly offsetErrorS: number | undefined;
  /** Whether each load was taken exactly once. */
  readonly complete: boolean;
  /** Greatest relative error of a step value, of either instrument, against the true force over the same stretch. */
  readonly worstStep: number;
  /** Greatest speed of the true load inside a taken stretch, as seen by either clock, newtons a second. */
  readonly worstSpeedNPerS: number;
};

const steady = (limitN: number) => ({ windowS: 2, maxDrift: limitN, maxScatter: limitN });

/** One simulated proof with two instruments on ports of their own, taken as the program takes it. */
export function streamTrial(seed: number): StreamTrial {
  const s = proofStreams(seed);
  const found = alignStreams(s.reference, s.gauge, 5);
  if (found.kind === "unclear") return { offsetErrorS: undefined, complete: false, worstStep: 0, worstSpeedNPerS: 0 };
  const rule = { reference: steady(1.5), gauge: steady(2), offsetS: found.offsetS, offsetHalfWidthS: found.halfWidthS };
  const steps = takeSteps(s.reference, s.gauge, rule).filter((step) => step.reference > 500);
  let [worstStep, worstSpeedNPerS] = [0, 0];
  for (const step of steps) {
    let [sum, count] = [0, 0];
    for (let t = step.fromS; t <= step.toS; t += 0.01) {
      sum += s.forceAt(t);
      count += 1;
      worstSpeedNPerS = Math.max(worstSpeedNPerS, s.speedAt(t), s.speedAt(t - found.offsetS + s.offsetS));
    }
    for (const value of [step.reference, step.indication])
      worstStep = Math.max(worstStep, Math.abs((value * count) / sum - 1));
  }
  return { offsetErrorS: found.offsetS - s.offsetS, complete: steps.length === s.steps, worstStep, worstSpeedNPerS };
}
