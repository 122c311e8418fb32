import data from "./astmE74.json" with { type: "json" };
import { flagField, positiveField, tableFields, textField } from "./tableFields.ts";

export type AstmE74Table = {
  readonly standard: string;
  /** True until somebody has checked it against an edition; every report says so. */
  readonly fromMemory: boolean;
  /** Lower limit factor over the residual standard deviation. */
  readonly factor: number;
  /** Lower limit of a class over the lower limit factor. */
  readonly multipleAA: number;
  readonly multipleA: number;
  readonly fewestReadings: number;
  readonly fewestForces: number;
  readonly highestDegree: number;
  /** Probability whose F value the choice of degree compares with. */
  readonly degreeProbability: number;
};

const name = "ASTM E74 table";
const figures = [
  "factor",
  "multipleAA",
  "multipleA",
  "fewestReadings",
  "fewestForces",
  "highestDegree",
  "degreeProbability",
] as const;

/**
 * The figures of the method out of a JSON file, as shipped or as a laboratory has corrected it.
 * @throws RangeError  a field is missing, unknown or no sensible figure
 */
export function readAstmE74Table(value: unknown): AstmE74Table {
  const record = tableFields(value, name, ["standard", "fromMemory", ...figures]);
  const [factor, multipleAA, multipleA, fewestReadings, fewestForces, highestDegree, degreeProbability] = figures.map(
    (field) => positiveField(record, name, field),
  ) as [number, number, number, number, number, number, number]; // one for each name of the list
  if (degreeProbability >= 1)
    throw new RangeError(`${name}: "degreeProbability" must be below 1, got ${degreeProbability}`);
  if (highestDegree > 12 || !Number.isInteger(highestDegree))
    throw new RangeError(`${name}: "highestDegree" must be a whole number up to 12`);
  return {
    standard: textField(record, name, "standard"),
    fromMemory: flagField(record, name, "fromMemory"),
    factor,
    multipleAA,
    multipleA,
    fewestReadings,
    fewestForces,
    highestDegree,
    degreeProbability,
  };
}

export const astmE74Table: AstmE74Table = readAstmE74Table(data);
