import data from "./iso376.json" with { type: "json" };
import { flagField, positiveField, tableFields, textField } from "./tableFields.ts";

/** Limits of one class, percent; without sign, applied to both. */
export type Iso376Limits = {
  readonly class: string;
  readonly b: number;
  readonly bPrime: number;
  readonly fc: number;
  readonly f0: number;
  readonly v: number;
  readonly c: number;
  /** Expanded uncertainty (k = 2) of the reference force. */
  readonly referenceExpanded: number;
  /** The smallest force holds at least so many steps of the gauge's resolution. */
  readonly resolutionMultiple: number;
};

export type Iso376Table = {
  readonly standard: string;
  /** True until somebody has checked it against an edition; every report says so. */
  readonly fromMemory: boolean;
  /** A class reaches down at least to this share of the greatest force. */
  readonly smallestForceShare: number;
  readonly fewestSteps: number;
  /** Best class first. */
  readonly classes: readonly Iso376Limits[];
};

const name = "ISO 376 table";
const limitFields = ["class", "b", "bPrime", "fc", "f0", "v", "c", "referenceExpanded", "resolutionMultiple"] as const;

/**
 * The table of classes out of a JSON file, as shipped or as a laboratory has corrected it.
 * @throws RangeError  a field is missing, unknown or no sensible figure, or a class is narrower than a better one
 */
export function readIso376Table(value: unknown): Iso376Table {
  const t = tableFields(value, name, ["standard", "fromMemory", "smallestForceShare", "fewestSteps", "classes"]);
  if (!Array.isArray(t.classes) || t.classes.length === 0)
    throw new RangeError(`${name}: "classes" must list at least one class`);
  const classes = t.classes.map(readLimits);
  for (let i = 1; i < classes.length; i += 1) {
    for (const field of ["b", "bPrime", "fc", "f0", "v", "c"] as const) {
      if (classes[i]![field] < classes[i - 1]![field])
        throw new RangeError(`${name}: class ${classes[i]!.class} has a narrower ${field} than the class before it`);
    }
  }
  return {
    standard: textField(t, name, "standard"),
    fromMemory: flagField(t, name, "fromMemory"),
    smallestForceShare: positiveField(t, name, "smallestForceShare"),
    fewestSteps: positiveField(t, name, "fewestSteps"),
    classes,
  };
}

function readLimits(value: unknown): Iso376Limits {
  const record = tableFields(value, name, limitFields);
  const figure = (field: (typeof limitFields)[number]) => positiveField(record, name, field);
  return {
    class: textField(record, name, "class"),
    b: figure("b"),
    bPrime: figure("bPrime"),
    fc: figure("fc"),
    f0: figure("f0"),
    v: figure("v"),
    c: figure("c"),
    referenceExpanded: figure("referenceExpanded"),
    resolutionMultiple: figure("resolutionMultiple"),
  };
}

export const iso376Table: Iso376Table = readIso376Table(data);
