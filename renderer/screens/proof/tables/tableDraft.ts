import type { ProofTableRow } from "../../../../app/contract/proofViews.ts";
import { figureText, parseNumber } from "../../../words/parseNumber.ts";

export const classFigures = ["b", "bPrime", "fc", "f0", "v", "c", "referenceExpanded", "resolutionMultiple"] as const;
export const wholeFigures = {
  iso376: ["smallestForceShare", "fewestSteps"],
  astmE74: [
    "factor",
    "multipleAA",
    "multipleA",
    "fewestReadings",
    "fewestForces",
    "highestDegree",
    "degreeProbability",
  ],
} as const;
export type WholeFigure = (typeof wholeFigures)[ProofTableRow["table"]][number];
export type ClassFigure = (typeof classFigures)[number];

/** A table as it stands in the fields; a figure of a class bears the class's place: `b0`. */
export type TableDraft = {
  readonly standard: string;
  readonly checked: boolean;
  readonly classes: readonly string[];
  readonly figures: Readonly<Record<string, string>>;
};

export type TableFault =
  | "noNumber"
  | "wholeNumber"
  | "atMostTwelve"
  | "belowOne"
  | "upToOne"
  | "narrower"
  | "editionNeeded";

/** The table in force, to be corrected; whether it was held against an edition is asked anew where it is the shipped one. */
export function tableDraftOf({ table, value }: ProofTableRow): TableDraft {
  const numbers: Readonly<Record<string, unknown>> = { ...value };
  const classes = table === "iso376" ? value.classes : [];
  return {
    standard: value.standard,
    checked: !value.fromMemory,
    classes: classes.map((limits) => limits.class),
    figures: Object.fromEntries([
      ...wholeFigures[table].map((name) => [name, figureText(Number(numbers[name]))]),
      ...classes.flatMap((limits, i) => classFigures.map((name) => [`${name}${i}`, figureText(limits[name])])),
    ]),
  };
}

const rules: Readonly<Partial<Record<WholeFigure, readonly [TableFault, (value: number) => boolean]>>> = {
  smallestForceShare: ["upToOne", (v) => v <= 1],
  fewestSteps: ["wholeNumber", Number.isInteger],
  fewestReadings: ["wholeNumber", Number.isInteger],
  fewestForces: ["wholeNumber", Number.isInteger],
  highestDegree: ["atMostTwelve", (v) => Number.isInteger(v) && v <= 12],
  degreeProbability: ["belowOne", (v) => v < 1],
};
/** Limits that a lower class may not have tighter. */
const widening: readonly ClassFigure[] = ["b", "bPrime", "fc", "f0", "v", "c"];

/**
 * The table as the core takes it.
 * @returns  `faults` by field: what the core would refuse stands there already
 */
export function tableOf(table: ProofTableRow["table"], draft: TableDraft) {
  const faults = new Map<string, TableFault>();
  if (draft.standard.trim() === "") faults.set("standard", "editionNeeded");
  const figure = (field: string): number => {
    const value = parseNumber(draft.figures[field] ?? "");
    if (typeof value === "number" && value > 0) return value;
    faults.set(field, "noNumber");
    return 0;
  };
  const whole = wholeFigures[table].map((name: WholeFigure) => {
    const value = figure(name);
    const rule = rules[name];
    if (!faults.has(name) && rule !== undefined && !rule[1](value)) faults.set(name, rule[0]);
    return [name, value] as const;
  });
  const limits = draft.classes.map(
    (_, i) =>
      // One for each name of the list.
      Object.fromEntries(classFigures.map((field) => [field, figure(`${field}${i}`)])) as Record<ClassFigure, number>,
  );
  for (let i = 1; i < limits.length; i += 1)
    for (const field of widening)
      if (!faults.has(`${field}${i}`) && limits[i]![field] < limits[i - 1]![field])
        faults.set(`${field}${i}`, "narrower");
  return {
    value: {
      standard: draft.standard.trim(),
      fromMemory: !draft.checked,
      ...Object.fromEntries(whole),
      ...(table === "iso376" ? { classes: limits.map((one, i) => ({ class: draft.classes[i]!, ...one })) } : {}),
    },
    faults,
  };
}
