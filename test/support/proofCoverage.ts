import { findRoot } from "../../app/numerics/findRoot.ts";
import type { PolynomialFit } from "../../app/numerics/fitPolynomial.ts";
import { polynomialAt } from "../../app/numerics/polynomialAt.ts";
import type { ProofReading } from "../../app/proof/data/ProofReading.ts";
import { e74Proof } from "../../app/proof/e74/e74Proof.ts";
import { iso376Proof } from "../../app/proof/iso376/iso376Proof.ts";
import { isRefused, type ProofRefused } from "../../app/proof/method/ProofOptions.ts";
import { polynomialProof } from "../../app/proof/method/polynomialProof.ts";
import { workingCheck } from "../../app/proof/working/workingCheck.ts";
import { normalFrom, seededUniform } from "./proofStreams.ts";

/** How a simulated gauge of 30 kN is proved: all parts independent normal deviations, standard deviations given. */
export type ProofWorld = {
  /** Of a single reading, newtons. */
  readonly noiseN: number;
  /** Of the slope from one mounting to the next, a share. */
  readonly mounting: number;
  /** Of the reference, a share common to the whole proof; the proof is told it. */
  readonly reference: number;
  readonly runs: number;
};

export type Covered = { readonly covered: number; readonly meanExpandedN: number };

type Method = "polynomial" | "iso376" | "astm-e74" | "working";

/**
 * Share of simulated proofs whose stated 95 % interval holds the true force (the true error, for the working check) at
 * a load drawn at random. The truth is the gauge's curve without noise and mounting, and the true reference force.
 */
export function proofCoverage(method: Method, world: ProofWorld, proofs: number, seed: number): Covered {
  const uniform = seededUniform(seed);
  const normal = () => normalFrom(uniform);
  let hits = 0;
  let sum = 0;
  for (let i = 0; i < proofs; i += 1) {
    const [a, b, c] = [1 + 0.002 * normal(), 1e-7 * normal(), 1e-12 * normal()];
    const curve = (force: number) => force * (a + b * force + c * force * force);
    const step = Math.floor(10 * uniform());
    const trueN = 3000 * (step + 1);
    const { offN, expandedN } = answer(
      method,
      readings(world, method, curve, normal),
      world,
      step,
      trueN,
      curve(trueN),
    );
    if (Math.abs(offN) <= expandedN) hits += 1;
    sum += expandedN;
  }
  return { covered: hits / proofs, meanExpandedN: sum / proofs };
}

function readings(
  world: ProofWorld,
  method: Method,
  curve: (force: number) => number,
  normal: () => number,
): ProofReading[] {
  const referenceError = world.reference * normal();
  // ISO 376 begins with a second series at the first position.
  const positions = Array.from({ length: world.runs }, (_, i) => (360 * i) / world.runs);
  const runs = method === "iso376" ? [0, ...positions] : positions;
  const seats = new Map(positions.map((p) => [p, world.mounting * normal()]));
  return runs.flatMap((positionDeg, run) => {
    const row = (direction: ProofReading["direction"], reference: number, indication: number): ProofReading => ({
      reference,
      indication,
      direction,
      run: String(run),
      step: undefined,
      positionDeg,
    });
    const loads = Array.from({ length: 10 }, (_, i) => 3000 * (i + 1));
    const up = loads.map((f) =>
      row("up", f * (1 + referenceError), curve(f) + seats.get(positionDeg)! * f + world.noiseN * normal()),
    );
    return [row("zeroBefore", 0, 0), ...up, row("zeroAfter", 0, 0)];
  });
}

function answer(
  method: Method,
  rows: readonly ProofReading[],
  world: ProofWorld,
  step: number,
  trueN: number,
  shownN: number,
) {
  const options = { referenceRelative: world.reference, degree: method === "working" ? undefined : 3 };
  if (method === "working") {
    const at = done(workingCheck(rows, undefined, { rule: "guarded" }, options)).steps[step]!;
    return { offN: at.error - (shownN - trueN), expandedN: at.uncertainty.expanded };
  }
  if (method === "polynomial") {
    const proof = done(polynomialProof(rows, options));
    const foundN = readBack(proof.fit, shownN);
    return { offN: foundN - trueN, expandedN: proof.uncertaintyAt(foundN).expanded };
  }
  const proof = method === "iso376" ? done(iso376Proof(rows, options)) : done(e74Proof(rows, options));
  return { offN: readBack(proof.fit, shownN) - trueN, expandedN: proof.steps[step]!.uncertainty.expanded };
}

function done<T extends object>(value: T | ProofRefused): T {
  if (isRefused(value)) throw new Error(value.refused);
  return value;
}

const readBack = (fit: PolynomialFit, shownN: number) =>
  findRoot((x) => polynomialAt(fit, x).value - shownN, -5000, 45_000);

/** What the proofs are held to: from noise alone to mounting that outweighs it, three runs and five. */
export const proofWorlds: readonly ProofWorld[] = Object.freeze([
  { noiseN: 3, mounting: 0, reference: 0, runs: 3 },
  { noiseN: 3, mounting: 0, reference: 1e-4, runs: 3 },
  { noiseN: 3, mounting: 1e-4, reference: 5e-5, runs: 3 },
  { noiseN: 3, mounting: 3e-4, reference: 1e-4, runs: 3 },
  { noiseN: 10, mounting: 3e-4, reference: 3e-4, runs: 3 },
  { noiseN: 3, mounting: 2e-4, reference: 1e-4, runs: 5 },
]);
