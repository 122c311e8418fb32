import type { PolynomialFit } from "../../numerics/fitPolynomial.ts";
import { polynomialAt } from "../../numerics/polynomialAt.ts";
import type { LoadPoint, ProofSeries } from "../data/seriesOf.ts";
import type { Iso376Roles } from "./iso376Roles.ts";

/** A step all rotated series have, brought to one common force. */
export type Iso376Step = {
  readonly level: number;
  readonly reference: number;
  /** Deflections of the rotated series and their mean. */
  readonly deflections: readonly number[];
  readonly mean: number;
};

/** Relative errors of a step, percent; undefined where the data for it are missing. */
export type Iso376Errors = {
  readonly b: number | undefined;
  readonly bPrime: number | undefined;
  readonly fc: number;
  readonly v: number | undefined;
};

/**
 * Steps that every rotated series has. Where their loads differ a little, each deflection is taken in proportion to
 * the mean load, as the deflection of an elastic body is.
 */
export function iso376Steps(roles: Iso376Roles): readonly Iso376Step[] {
  const [first, ...others] = roles.rotated;
  if (first === undefined) return [];
  return first.up.flatMap((point) => {
    const points = [point, ...others.map((s) => at(s.up, point.level))];
    if (points.some((p) => p === undefined || p.reference <= 0)) return [];
    const known = points as LoadPoint[]; // none is undefined, as the line above has shown
    const same = known.every((p) => p.reference === point.reference);
    const reference = same ? point.reference : average(known.map((p) => p.reference));
    const deflections = known.map((p) => atForce(p, reference));
    return [{ level: point.level, reference, deflections, mean: average(deflections) }];
  });
}

/** @see ISO 376:2011, 7.5 (from memory) */
export function iso376Errors(step: Iso376Step, fit: PolynomialFit, roles: Iso376Roles): Iso376Errors {
  const { deflections, mean, reference } = step;
  const fitted = polynomialAt(fit, reference).value;
  return {
    b:
      deflections.length < 2
        ? undefined
        : (100 * (Math.max(...deflections) - Math.min(...deflections))) / Math.abs(mean),
    bPrime: repeatability(roles.repeated, step),
    fc: (100 * (mean - fitted)) / fitted,
    v: reversibility(roles.falling, step),
  };
}

function repeatability(repeated: Iso376Roles["repeated"], { level, reference }: Iso376Step): number | undefined {
  const points = repeated?.map((s: ProofSeries) => at(s.up, level)) ?? [];
  if (points.length !== 2 || points[0] === undefined || points[1] === undefined) return undefined;
  const [a, b] = [atForce(points[0], reference), atForce(points[1], reference)];
  return (100 * Math.abs(b - a)) / Math.abs((a + b) / 2);
}

function reversibility(falling: Iso376Roles["falling"], { level, reference }: Iso376Step): number | undefined {
  const each = falling.flatMap(({ up, down }) => {
    const rise = at(up.up, level);
    const fall = at(down, level);
    if (rise === undefined || fall === undefined) return [];
    const [r, f] = [atForce(rise, reference), atForce(fall, reference)];
    return [(100 * Math.abs(f - r)) / Math.abs(r)];
  });
  return each.length === 0 ? undefined : average(each);
}

const at = (points: readonly LoadPoint[], level: number) => points.find((p) => p.level === level);
const atForce = (p: LoadPoint, reference: number) =>
  p.reference === reference ? p.net : (p.net * reference) / p.reference;
const average = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
