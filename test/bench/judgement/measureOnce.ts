import type { BudgetInput } from "../../../app/correction/BudgetInput.ts";
import { mean } from "../../../app/numerics/mean.ts";
import { sampleStdDev } from "../../../app/numerics/sampleStdDev.ts";
import type { Place } from "./randomPlace.ts";
import type { SeededRandom } from "./SeededRandom.ts";

/** Quiet readings behind a zero. */
const REST = 16;

export type Measured = { readonly trueN: number; readonly valueN: number; readonly input: BudgetInput };

/**
 * Measures a place once: draws every error there is, rounds as the gauge does, and makes the input of a budget from
 * what the program would know, which is not the truth but its own readings and stated uncertainties.
 */
export function measureOnce(place: Place, n: number, random: SeededRandom): Measured {
  const { resolutionN: step } = place;
  // The truth is not tied to the gauge's steps: a fixed one would leave a lattice of possible errors.
  const trueN = place.forceN + random.rectangle(step);
  const shared =
    1 +
    place.proof * random.normal() +
    place.adapter * random.normal() +
    random.rectangle(place.temperature) +
    random.rectangle(place.drift) +
    random.rectangle(place.misalignment);
  const rest = random.rectangle(step); // where zero lies between two steps of the gauge
  const rests = Array.from({ length: REST }, () => round(rest + place.restN * random.normal(), step));
  const restN = sampleStdDev(rests);
  const moved = rest + random.rectangle(place.halfChangeN);
  const readings = Array.from({ length: n }, () =>
    round(trueN * shared + place.scatterN * random.normal() + moved, step),
  );
  const valueN = mean(readings) - mean(rests);
  // The proof's own uncertainty is an estimate too, from as many degrees of freedom as it states.
  const proof = place.proof * Math.sqrt(random.chiSquare(place.proofDegrees) / place.proofDegrees);
  return {
    trueN,
    valueN,
    input: {
      forceN: valueN,
      repeats: { n, sN: sampleStdDev(readings) },
      resolutionN: step,
      zero: { noiseN: restN / Math.sqrt(REST), readingN: restN, halfChangeN: place.halfChangeN },
      gaugeProof: { relative: proof, degreesOfFreedom: place.proofDegrees },
      adapter: { relative: place.adapter },
      temperature: { perKelvin: place.temperature, differenceK: 1 },
      drift: { perYear: place.drift, years: 1 },
      misalignment: { halfWidth: place.misalignment },
    },
  };
}

const round = (x: number, step: number) => Math.round(x / step) * step;
