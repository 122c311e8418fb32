import type { Gravity } from "./siteGravity.ts";

export type Weight = {
  readonly massKg: number;
  /** Certificates state the conventional mass; a mass by weighing in vacuum or by computation is the true one. */
  readonly massKind: "true" | "conventional";
  /** Standard uncertainties, k = 1. */
  readonly massStandardKg: number;
  readonly densityKgM3: number;
  readonly densityStandardKgM3: number;
};

export type WeightSite = {
  readonly gravity: Gravity;
  readonly airDensityKgM3: number;
  readonly airDensityStandardKgM3: number;
};

export type DeadWeightForce = {
  readonly forceN: number;
  readonly standardN: number;
  readonly contributions: readonly {
    readonly source: "mass" | "density" | "gravity" | "air";
    readonly standardN: number;
  }[];
};

/**
 * Force of a stack of weights hanging in air: mass times gravity, less buoyancy. Masses and densities of one stack
 * mostly come from one certificate, so their uncertainties add up within the stack rather than averaging out.
 * @param weights  all weights on the gauge, the hanger among them; at least one
 * @returns  newtons and their standard uncertainty (k = 1) with its parts
 * @throws RangeError  no weight, or a figure no weight or site can have; the words are for the user
 * @see NISTIR 6969 (2019) SOP 2; OIML D 28:2004 for the conventional mass (1.2 and 8000 kg/m3)
 */
export function deadWeightForce(weights: readonly Weight[], site: WeightSite): DeadWeightForce {
  refuse(weights, site);
  const { gravity, airDensityKgM3: air } = site;
  const force = (w: Weight, airKgM3 = air) => trueMass(w) * gravity.value * (1 - airKgM3 / w.densityKgM3);
  const sum = (part: (w: Weight) => number) => weights.reduce((total, w) => total + part(w), 0);
  const denser = (w: Weight) => ({ ...w, densityKgM3: w.densityKgM3 * (1 + 1e-6) });
  const forceN = sum((w) => force(w));
  const contributions = [
    { source: "mass", standardN: sum((w) => (force(w) / w.massKg) * w.massStandardKg) },
    {
      source: "density",
      standardN: sum((w) => (Math.abs(force(denser(w)) - force(w)) / (1e-6 * w.densityKgM3)) * w.densityStandardKgM3),
    },
    { source: "gravity", standardN: (forceN / gravity.value) * gravity.standard },
    { source: "air", standardN: Math.abs(sum((w) => force(w, air + 1)) - forceN) * site.airDensityStandardKgM3 },
  ] as const;
  return { forceN, standardN: Math.hypot(...contributions.map((c) => c.standardN)), contributions };
}

function trueMass({ massKg, massKind, densityKgM3 }: Weight): number {
  return massKind === "true" ? massKg : (massKg * (1 - 1.2 / 8000)) / (1 - 1.2 / densityKgM3);
}

function refuse(weights: readonly Weight[], site: WeightSite): void {
  if (weights.length === 0) throw new RangeError("a dead-weight force needs at least one weight");
  for (const w of weights) {
    if (!(w.massKg > 0 && w.massKg < 1e6)) throw new RangeError(`a mass lies above 0 kg, got ${w.massKg}`);
    if (!(w.densityKgM3 >= 1000 && w.densityKgM3 <= 23_000)) {
      throw new RangeError(`a weight's density lies between 1000 and 23000 kg/m3, got ${w.densityKgM3}`);
    }
    if (!(w.massStandardKg >= 0 && w.densityStandardKgM3 >= 0))
      throw new RangeError("an uncertainty is not below zero");
  }
  const { value, standard } = site.gravity;
  if (!(value > 9.7 && value < 9.9))
    throw new RangeError(`gravity on the ground lies between 9.7 and 9.9 m/s2, got ${value}`);
  if (!(site.airDensityKgM3 >= 0 && site.airDensityKgM3 < 2))
    throw new RangeError(`an air density lies below 2 kg/m3, got ${site.airDensityKgM3}`);
  if (!(standard >= 0 && site.airDensityStandardKgM3 >= 0)) throw new RangeError("an uncertainty is not below zero");
}
