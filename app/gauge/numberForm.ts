import { type ForceUnit, forceUnits } from "../quantity/forceUnits.ts";
import type { PatternField } from "./linePattern.ts";

type ForceField = Extract<PatternField, { field: "force" }>;

/** How a number may be written, flattened for the reading loop: bytes and counts, -1 where nothing is asked. */
export type NumberForm = {
  readonly signMust: boolean;
  readonly signColumn: boolean;
  readonly signAfter: boolean;
  readonly signGap: boolean;
  readonly mark: number;
  readonly mayOmitZero: boolean;
  readonly thousands: number;
  readonly wholeDigits: number;
  readonly digits: number;
  readonly width: number;
  readonly left: boolean;
  readonly mayGrow: boolean;
  readonly exponent: boolean;
  /** Digits at its end that belong to a check standing right behind the number. */
  readonly giveBack: number;
  /** None of the rarer ways of writing is allowed: the short way of reading will do. */
  readonly plain: boolean;
  /** Bit d set: d decimals may stand. One mask a unit, in the order of `forceUnits`. */
  readonly decimalsOf: Int32Array;
};

const anyDecimals = 0x3ff;

const bareField: ForceField = {
  field: "force",
  sign: "maybe",
  signGap: false,
  mayOmitZero: false,
  align: "right",
  mayGrow: false,
  exponent: false,
  held: false,
  instead: {},
};

/** A further number that is only passed over, as long as it likes. */
export const looseNumber: NumberForm = formOf({ ...bareField, signGap: true, mayOmitZero: true });

export function formOf(field: ForceField): NumberForm {
  const masks = new Int32Array(forceUnits.length).fill(
    field.decimals === undefined ? anyDecimals : maskOf(field.decimals),
  );
  // Object.entries widens the keys; the schema has vouched for them.
  for (const [unit, counts] of Object.entries(field.decimalsOf ?? {}) as [ForceUnit, readonly number[]][]) {
    masks[forceUnits.indexOf(unit)] = maskOf(counts);
  }
  return {
    signMust: field.sign === "always",
    signColumn: field.sign === "column",
    signAfter: field.sign === "after",
    signGap: field.signGap,
    mark: field.decimalMark?.charCodeAt(0) ?? -1,
    mayOmitZero: field.mayOmitZero,
    thousands: field.thousands?.charCodeAt(0) ?? -1,
    wholeDigits: field.wholeDigits ?? -1,
    digits: field.digits ?? -1,
    width: field.width ?? -1,
    left: field.align === "left",
    mayGrow: field.mayGrow,
    exponent: field.exponent,
    giveBack: 0,
    plain: !(
      field.sign === "column" ||
      field.sign === "after" ||
      field.signGap ||
      field.thousands ||
      field.exponent ||
      field.mayOmitZero ||
      field.align === "left"
    ),
    decimalsOf: masks,
  };
}

function maskOf(counts: readonly number[]): number {
  let mask = 0;
  for (const count of counts) mask |= 1 << count;
  return mask;
}
