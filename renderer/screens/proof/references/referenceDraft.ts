import type { Reference } from "../../../../app/ledger/proof.ts";
import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { figureText } from "../../../words/parseNumber.ts";

export type ReferenceKind = Reference["kind"];

/** A reference as it stands in the fields; uncertainties as certificates state them, expanded with k = 2. */
export type ReferenceDraft = {
  readonly name: string;
  readonly serial: string;
  readonly kind: ReferenceKind;
  readonly certificate: string;
  readonly retired: boolean;
  readonly massKind: "true" | "conventional";
  readonly weights: readonly WeightDraft[];
  readonly gravityFrom: "measured" | "place";
  readonly gravity: string;
  readonly gravityU: string;
  readonly latitude: string;
  readonly height: string;
  readonly capacity: string;
  readonly class: string;
  readonly calibratedOn: string;
  readonly dueOn: string;
  readonly drift: string;
  readonly coefficients: readonly [string, string, string, string];
  readonly from: string;
  readonly to: string;
  readonly points: readonly { readonly at: string; readonly u: string }[];
  readonly relative: string;
  readonly fixed: string;
};

export type WeightDraft = {
  readonly label: string;
  readonly mass: string;
  readonly massU: string;
  readonly density: string;
  readonly densityU: string;
};

/** Steel as weights are mostly made of; the field says that the certificate's own figure goes before it. */
export const usualWeight: WeightDraft = { label: "", mass: "", massU: "", density: "7950", densityU: "140" };

/** The fields of a stored reference, or of a new one. */
export function referenceDraftOf(reference: Reference | undefined, unit: ForceUnit): ReferenceDraft {
  const force = (forceN: number | undefined) => figureText(forceN && fromNewtons(forceN, unit));
  const { weights: rig, transducer, typed } = reference ?? {};
  const perUnit = 1 / fromNewtons(1, unit);
  const coefficient = (k: number, otherwise: string) => {
    const c = transducer?.curve.coefficients[k];
    return c === undefined ? otherwise : figureText(c * perUnit ** (k - 1));
  };
  return {
    name: reference?.name ?? "",
    serial: reference?.serial ?? "",
    kind: reference?.kind ?? "weights",
    certificate: reference?.certificate ?? "",
    retired: reference?.state === "retired",
    massKind: rig?.weights[0]?.massKind ?? "conventional",
    weights: rig?.weights.map((w) => ({
      label: w.label,
      mass: figureText(w.massKg),
      massU: figureText(2000 * w.massStandardKg),
      density: figureText(w.densityKgM3),
      densityU: figureText(2 * w.densityStandardKgM3),
    })) ?? [{ ...usualWeight, label: "1" }],
    gravityFrom: rig?.gravity.from ?? "place",
    gravity: rig?.gravity.from === "measured" ? figureText(rig.gravity.value) : "",
    gravityU: rig?.gravity.from === "measured" ? figureText(2 * rig.gravity.standard) : "",
    latitude: rig?.gravity.from === "place" ? figureText(rig.gravity.latitudeDeg) : "",
    height: rig?.gravity.from === "place" ? figureText(rig.gravity.heightM) : "",
    capacity: force(transducer?.capacityN ?? typed?.capacityN),
    class: transducer?.class ?? "",
    calibratedOn: transducer?.calibratedOn ?? "",
    dueOn: transducer?.dueOn ?? typed?.dueOn ?? "",
    drift: figureText(transducer === undefined ? undefined : 100 * transducer.driftPerYear),
    coefficients: [coefficient(0, "0"), coefficient(1, "1"), coefficient(2, "0"), coefficient(3, "0")],
    from: force(transducer?.curve.fromN),
    to: force(transducer?.curve.toN),
    points: transducer?.curve.uncertainty.map(({ atN, relative }) => ({
      at: force(atN),
      u: figureText(200 * relative),
    })) ?? [{ at: "", u: "" }],
    relative: figureText(typed === undefined ? undefined : 200 * typed.relative),
    fixed: force(typed === undefined ? undefined : 2 * typed.standardN),
  };
}
