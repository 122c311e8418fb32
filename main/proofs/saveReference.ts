import type { Parsed } from "../../app/contract/methods.ts";
import type { ReferenceRow } from "../../app/contract/proofViews.ts";
import { AppError } from "../../app/contract/result.ts";
import { type Reference, reference as referenceSchema } from "../../app/ledger/proof.ts";
import { deadWeightForce } from "../../app/proof/reference/deadWeightForce.ts";
import { siteGravity } from "../../app/proof/reference/siteGravity.ts";

export function toReferenceRow(reference: Reference, today: string): ReferenceRow {
  const dueOn = reference.transducer?.dueOn ?? reference.typed?.dueOn;
  return { reference, dueState: dueOn === undefined ? "none" : dueOn < today ? "pastDue" : "current" };
}

/**
 * A reference as it can be filed.
 * @throws AppError  a figure that no weight, place or transducer can have, with the words for it
 */
export function checkedReference(input: Parsed<"references.save">, referenceId: string): Reference {
  if (input[input.kind] === undefined)
    throw refusal("section", "The figures of this kind of reference are missing.", input.kind);
  if (input.weights !== undefined) checkRig(input.weights);
  if (input.transducer !== undefined) checkTransducer(input.transducer);
  const only = { [input.kind]: input[input.kind] };
  const { weights: _w, transducer: _t, typed: _v, ...common } = input;
  return referenceSchema.parse({ ...common, ...only, referenceId });
}

function checkRig({ weights, gravity }: NonNullable<Parsed<"references.save">["weights"]>): void {
  const labels = weights.map((w) => w.label);
  const twice = labels.find((label, i) => labels.indexOf(label) !== i);
  if (twice !== undefined) throw refusal("labelTwice", `Two weights are labelled ${twice}.`, "weights");
  if (gravity.from === "place") {
    if (!(Math.abs(gravity.latitudeDeg) <= 90))
      throw refusal(
        "latitude",
        `A latitude lies between -90 and 90 degrees, got ${gravity.latitudeDeg}.`,
        "latitudeDeg",
      );
    if (!(gravity.heightM >= -500 && gravity.heightM <= 9000))
      throw refusal("height", `A height lies between -500 and 9000 m, got ${gravity.heightM}.`, "heightM");
  } else if (!(gravity.value > 9.7 && gravity.value < 9.9)) {
    throw refusal("gravity", `Gravity on the ground lies between 9.7 and 9.9 m/s², got ${gravity.value}.`, "gravity");
  }
  const place = gravity.from === "place" ? siteGravity(gravity.latitudeDeg, gravity.heightM) : gravity;
  for (const w of weights) {
    if (!(w.massKg > 0)) throw refusal("mass", `The mass of ${w.label} must be above 0 kg, got ${w.massKg}.`, "massKg");
    if (!(w.densityKgM3 >= 1000 && w.densityKgM3 <= 23_000))
      throw refusal(
        "density",
        `The density of ${w.label} lies between 1000 and 23000 kg/m³, got ${w.densityKgM3}.`,
        "densityKgM3",
      );
    if (!(w.massStandardKg >= 0 && w.densityStandardKgM3 >= 0))
      throw refusal("uncertainty", "An uncertainty is not below zero.", "massStandardKg");
    try {
      deadWeightForce([w], { gravity: place, airDensityKgM3: 1.2, airDensityStandardKgM3: 0 });
    } catch (cause) {
      if (cause instanceof RangeError) throw refusal("mass", `${w.label}: ${cause.message}.`, "massKg");
      throw cause;
    }
  }
}

function checkTransducer({
  curve,
  capacityN,
  calibratedOn,
  dueOn,
}: NonNullable<Parsed<"references.save">["transducer"]>): void {
  const rises = curve.uncertainty.every((p, i) => i === 0 || p.atN > curve.uncertainty[i - 1]!.atN);
  if (!(curve.toN > curve.fromN) || !rises)
    throw refusal(
      "curve",
      "A curve reaches from a smaller to a larger indication, and its uncertainties stand in that order.",
      "curve",
    );
  if (curve.toN > 2 * capacityN)
    throw refusal("curve", "The curve reaches far beyond the capacity: look at the units.", "curve");
  if (dueOn < calibratedOn) throw refusal("due", "The due date lies before the calibration.", "dueOn");
}

const refusal = (key: string, message: string, field: string) =>
  new AppError("invalid", message, { key: `reference.${key}`, field });
