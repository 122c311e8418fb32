import { AppError } from "../../app/contract/result.ts";
import type { Proof, ProofConditions, Reference } from "../../app/ledger/proof.ts";
import { airDensity } from "../../app/proof/reference/airDensity.ts";
import { airDensityUncertainty } from "../../app/proof/reference/airDensityUncertainty.ts";
import { deadWeightForce, type WeightSite } from "../../app/proof/reference/deadWeightForce.ts";
import { siteGravity } from "../../app/proof/reference/siteGravity.ts";

type Rig = NonNullable<Reference["weights"]>;

/** What reading room instruments leave in doubt, k = 1 (common practice, no source). */
const READ_WITH = { temperatureC: 0.5, pressurePa: 100, humidity: 0.05 };
/** Air nobody looked at: near sea level, with all weather and heights up to 1500 m in the doubt (common practice, no source). */
const UNREAD = { airDensityKgM3: 1.15, airDensityStandardKgM3: 0.06 };

/** Gravity and air a rig's forces are reckoned with. @throws RangeError  a figure that cannot be */
export function siteOf(rig: Rig, { temperatureC, pressurePa, humidity }: ProofConditions): WeightSite {
  const { gravity } = rig;
  const given = gravity.from === "measured" ? gravity : siteGravity(gravity.latitudeDeg, gravity.heightM);
  const place = { gravity: { value: given.value, standard: given.standard } };
  if (temperatureC === null || pressurePa === null || humidity === null) return { ...place, ...UNREAD };
  const air = { temperatureC, pressurePa, humidity };
  return {
    ...place,
    airDensityKgM3: airDensity(air),
    airDensityStandardKgM3: airDensityUncertainty(air, READ_WITH),
  };
}

/** The same as it is filed. */
export function filedSite({ weights }: Reference, conditions: ProofConditions): Proof["site"] {
  if (weights === undefined) return null;
  const { gravity, airDensityKgM3, airDensityStandardKgM3 } = siteOf(weights, conditions);
  return { airDensityKgM3, airDensityStandardKgM3, gravity: gravity.value, gravityStandard: gravity.standard };
}

export type Hung = { readonly labels: readonly string[]; readonly forceN: number; readonly standardN: number };

/** Force of the named weights. @throws AppError  a label the rig does not have, or one named twice */
export function forceOfHung(rig: Rig, conditions: ProofConditions, labels: readonly string[]): Hung {
  if (labels.length === 0) return { labels, forceN: 0, standardN: 0 };
  if (new Set(labels).size < labels.length)
    throw new AppError("invalid", "A weight is named twice: it can hang only once.", {
      key: "proof.weightTwice",
      field: "weights",
    });
  const weights = labels.map((label) => {
    const weight = rig.weights.find((w) => w.label === label);
    if (weight === undefined)
      throw new AppError("invalid", `The rig has no weight labelled ${label}.`, {
        key: "proof.noWeight",
        field: "weights",
      });
    return weight;
  });
  const { forceN, standardN } = deadWeightForce(weights, siteOf(rig, conditions));
  return { labels, forceN, standardN };
}

/** Up to so many weights every combination is tried; of more, whole stacks in hanging order. */
const MOST_FREE = 14;

/** Which weights come nearest to a target: the hanger always hangs; of equally near ones the fewest. */
export function hangFor(rig: Rig, conditions: ProofConditions, targetN: number): Hung {
  if (targetN <= 0) return { labels: [], forceN: 0, standardN: 0 };
  const labels = rig.weights.map((w) => w.label);
  const site = siteOf(rig, conditions);
  const forces = rig.weights.map((w) => deadWeightForce([w], site).forceN);
  const sets =
    labels.length <= MOST_FREE + 1
      ? freeSets(labels.length)
      : labels.map((_, i) => Array.from({ length: i + 1 }, (_, k) => k));
  let best: readonly number[] = [0];
  let least = Number.POSITIVE_INFINITY;
  for (const set of sets) {
    const off = Math.abs(set.reduce((sum, i) => sum + forces[i]!, 0) - targetN);
    if (off < least - 1e-9 || (off < least + 1e-9 && set.length < best.length)) [best, least] = [set, off];
  }
  return forceOfHung(
    rig,
    conditions,
    best.map((i) => labels[i]!),
  );
}

/** Every set of weights with the first, the hanger, in it. */
function freeSets(count: number): readonly (readonly number[])[] {
  return Array.from({ length: 2 ** (count - 1) }, (_, mask) => [
    0,
    ...Array.from({ length: count - 1 }, (_, i) => i + 1).filter((i) => (mask >> (i - 1)) & 1),
  ]);
}
