/**
 * Tapers by their standard designations. Hollow: ISO 12164 (forms A, C, T) and DIN 69893 (B, D, E, F); steep: ISO 7388-1
 * (forms A and U) and 7388-2 (form J), with D and F for coolant through the middle or the flange; polygonal: ISO 26623.
 * Forms and sizes are from memory.
 */
export type Taper = {
  readonly designation: string;
  readonly kind: "hollow" | "steep" | "polygonal";
  /** Empty where a steep taper is named by its number alone, and for polygonal ones. */
  readonly form: string;
  readonly size: number;
  /** Size of the cone itself: forms B, D and F have a flange one size larger than their cone. */
  readonly coneSize: number;
  readonly standard: string;
};

type Row = {
  readonly kind: Taper["kind"];
  readonly form: string;
  readonly standard: string;
  readonly sizes: readonly number[];
};

const hollowSizes = [20, 25, 32, 40, 50, 63, 80, 100, 125, 160];
const steepSizes = [30, 40, 45, 50, 60];
const from = (least: number, greatest: number) => hollowSizes.filter((size) => size >= least && size <= greatest);
const steep = (form: string, standard: string): Row => ({ kind: "steep", form, standard, sizes: steepSizes });

const rows: readonly Row[] = [
  { kind: "hollow", form: "A", standard: "ISO 12164-1", sizes: from(25, 160) },
  { kind: "hollow", form: "C", standard: "ISO 12164-1", sizes: from(32, 100) },
  { kind: "hollow", form: "T", standard: "ISO 12164-3", sizes: from(32, 160) },
  { kind: "hollow", form: "B", standard: "DIN 69893-2", sizes: from(40, 160) },
  { kind: "hollow", form: "D", standard: "DIN 69893-2", sizes: from(40, 100) },
  { kind: "hollow", form: "E", standard: "DIN 69893-5", sizes: from(20, 63) },
  { kind: "hollow", form: "F", standard: "DIN 69893-6", sizes: from(50, 80) },
  steep("", "ISO 7388"),
  ...["A", "AD", "AF", "U", "UD", "UF"].map((form) => steep(form, "ISO 7388-1")),
  ...["J", "JD", "JF"].map((form) => steep(form, "ISO 7388-2")),
  { kind: "polygonal", form: "", standard: "ISO 26623-1", sizes: [32, 40, 50, 63, 80, 100] },
];

const names = {
  hollow: (f: string, s: number) => `HSK-${f}${s}`,
  steep: (f: string, s: number) => `SK${s}${f && `-${f}`}`,
  polygonal: (_: string, s: number) => `PSC${s}`,
};
const flangeLarger = ["B", "D", "F"];

/** Every taper the program knows by name, in the order a list shows them. */
export const tapers: readonly Taper[] = Object.freeze(
  rows.flatMap(({ kind, form, standard, sizes }) =>
    sizes.map((size) => ({
      designation: names[kind](form, size),
      kind,
      form,
      size,
      coneSize: kind === "hollow" && flangeLarger.includes(form) ? hollowSizes[hollowSizes.indexOf(size) - 1]! : size,
      standard,
    })),
  ),
);
