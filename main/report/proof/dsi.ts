/**
 * Quantities by D-SI, the digital form of the SI that digital calibration certificates carry: names of its XML elements
 * as keys, units as it writes them (a backslash before each word, negative powers for division).
 * @see test/published/d-si.json for the elements, the pattern of numbers and the units as they were found published
 */
export type DsiReal = {
  readonly "si:real": {
    readonly "si:label": string;
    /** Quantity kind of the QUDT vocabulary. */
    readonly "si:quantityTypeQUDT"?: string;
    readonly "si:value": number;
    readonly "si:unit": string;
    readonly "si:measurementUncertaintyUnivariate"?:
      | { readonly "si:expandedMU": DsiExpanded }
      | { readonly "si:standardMU": { readonly "si:valueStandardMU": number } };
  };
};

type DsiExpanded = {
  readonly "si:valueExpandedMU": number;
  readonly "si:coverageFactor": number;
  readonly "si:coverageProbability": number;
};

export const dsiUnits = {
  newton: "\\newton",
  perNewton: "\\newton\\tothe{-1}",
  percent: "\\percent",
  one: "\\one",
  degree: "\\degree",
  second: "\\second",
  kelvin: "\\kelvin",
  celsius: "\\degreecelsius",
  pascal: "\\pascal",
  density: "\\kilogram\\metre\\tothe{-3}",
  acceleration: "\\metre\\second\\tothe{-2}",
} as const;

/** Newtons to a power, as a polynomial's coefficients have them. */
export const newtonsTo = (power: number): string =>
  power === 0 ? dsiUnits.one : power === 1 ? dsiUnits.newton : `\\newton\\tothe{${power}}`;

type Quantity = { readonly label: string; readonly kind?: string; readonly value: number; readonly unit: string };

/** A value without a statement of uncertainty. */
export const plainReal = ({ label, kind, value, unit }: Quantity): DsiReal => ({
  "si:real": {
    "si:label": label,
    ...(kind === undefined ? {} : { "si:quantityTypeQUDT": kind }),
    "si:value": value,
    "si:unit": unit,
  },
});

export const withExpanded = (quantity: Quantity, expanded: number, factor: number, probability: number): DsiReal => ({
  "si:real": {
    ...plainReal(quantity)["si:real"],
    "si:measurementUncertaintyUnivariate": {
      "si:expandedMU": {
        "si:valueExpandedMU": expanded,
        "si:coverageFactor": factor,
        "si:coverageProbability": probability,
      },
    },
  },
});

export const withStandard = (quantity: Quantity, standard: number): DsiReal => ({
  "si:real": {
    ...plainReal(quantity)["si:real"],
    "si:measurementUncertaintyUnivariate": { "si:standardMU": { "si:valueStandardMU": standard } },
  },
});
