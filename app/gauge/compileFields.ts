import { forceUnits } from "../quantity/forceUnits.ts";
import type { ChecksumMethod } from "./checksums.ts";
import { type ControlName, controlCode } from "./controlCharacters.ts";
import type { PatternField, WordMeaning } from "./linePattern.ts";
import { formOf, looseNumber, type NumberForm } from "./numberForm.ts";
import {
  ANY_STEP,
  BLANKS_STEP,
  BYTE_STEP,
  CHECKSUM_STEP,
  CLOCK_STEP,
  DATE_STEP,
  DIGITS_STEP,
  FORCE_STEP,
  HEX_STEP,
  LETTERS_STEP,
  NUMBER_STEP,
  STATUS_STEP,
  TEXT_STEP,
  TIME_STEP,
  UNIT_STEP,
} from "./stepKinds.ts";

/** Bytes to be compared; the first two stand apart, since most words and units have hardly more. */
export type Name = {
  readonly bytes: Uint8Array;
  readonly length: number;
  readonly first: number;
  readonly second: number;
};
export type Word = Name & { readonly means: WordMeaning };

export const nameOf = (bytes: Uint8Array): Name => ({
  bytes,
  length: bytes.length,
  first: bytes[0] ?? -1,
  second: bytes[1] ?? -1,
});

/** One step of reading. Every step has every member, so that the loop meets one shape of object only. */
export type Step = {
  readonly op: number;
  readonly byte: number;
  readonly bytes: Uint8Array;
  readonly least: number;
  readonly most: number;
  readonly words: readonly Word[];
  readonly optional: boolean;
  /** Of a unit: those that may stand, by their places in `forceUnits`. */
  readonly units: readonly number[];
  readonly held: boolean;
  readonly form: NumberForm;
  /** Times are divided by it to give seconds. */
  readonly perSecond: number;
  readonly coarse: boolean;
  /** Of a check: what each byte is worth as a digit, -1 for what is none, and the base. */
  readonly digits: Int8Array;
  readonly base: number;
  readonly method: ChecksumMethod;
  readonly complement: boolean;
  readonly first: number;
  readonly last: number;
};

const blank: Step = {
  op: BYTE_STEP,
  byte: -1,
  bytes: new Uint8Array(0),
  least: 0,
  most: 0,
  words: [],
  optional: false,
  units: [],
  held: false,
  form: looseNumber,
  perSecond: 1,
  coarse: false,
  digits: new Int8Array(0),
  base: 10,
  method: "xor",
  complement: false,
  first: 0,
  last: 0,
};

/** A line's fields as steps of the reading loop, one a field. */
export function compileFields(fields: readonly PatternField[]): readonly Step[] {
  return fields.map((field, i) => {
    const step = stepOf(field);
    const next = fields[i + 1];
    if (field.field !== "force" || next?.field !== "checksum" || next.as === "hex" || next.as === "HEX") return step;
    return { ...step, form: { ...step.form, giveBack: checksumLength[next.as], plain: false } };
  });
}

const perSecond = { s: 1, ms: 1000, us: 1_000_000, clock: 1 } as const;

function stepOf(field: PatternField): Step {
  switch (field.field) {
    case "text": {
      const bytes = bytesOf(field.text);
      return bytes.length === 1 ? { ...blank, op: BYTE_STEP, byte: bytes[0]! } : { ...blank, op: TEXT_STEP, bytes };
    }
    case "control":
      return { ...blank, op: BYTE_STEP, byte: controlCode(field.name as ControlName) };
    case "blanks":
      return { ...blank, op: BLANKS_STEP, least: field.least, most: field.most };
    case "status":
      return { ...blank, op: STATUS_STEP, words: wordsOf(field.words), optional: field.optional };
    case "force":
      return { ...blank, op: FORCE_STEP, form: formOf(field), words: wordsOf(field.instead), held: field.held };
    case "unit":
      return {
        ...blank,
        op: UNIT_STEP,
        optional: field.optional,
        units: (field.units ?? forceUnits).map((unit) => forceUnits.indexOf(unit)),
      };
    case "counter":
      return { ...blank, op: DIGITS_STEP, least: field.digits ?? 1, most: field.digits ?? 15 };
    case "time":
      return {
        ...blank,
        op: field.unit === "clock" ? CLOCK_STEP : TIME_STEP,
        byte: field.decimalMark?.charCodeAt(0) ?? -1,
        least: field.digits ?? 1,
        most: field.digits ?? 15,
        perSecond: perSecond[field.unit],
        coarse: field.coarse,
      };
    case "ignored":
      return {
        ...blank,
        op: ignoredOps[field.what],
        least: field.width ?? 1,
        most: field.width ?? 40,
        form: { ...looseNumber, mark: field.decimalMark?.charCodeAt(0) ?? -1 },
      };
    case "checksum":
      return {
        ...blank,
        op: CHECKSUM_STEP,
        method: field.method,
        least: checksumLength[field.as],
        digits: digitValues(checkDigits[field.as]),
        base: checkDigits[field.as].length,
        complement: field.complement,
        first: field.first - 1,
        last: field.last - 1,
      };
  }
}

const ignoredOps = { number: NUMBER_STEP, word: LETTERS_STEP, hex: HEX_STEP, date: DATE_STEP, any: ANY_STEP } as const;
// The other case of a hexadecimal letter is not what the gauge sent.
const checkDigits = {
  hex: "0123456789abcdef",
  HEX: "0123456789ABCDEF",
  decimal3: "0123456789",
  digit: "0123456789",
} as const;
const checksumLength = { hex: 2, HEX: 2, decimal3: 3, digit: 1 } as const;

function digitValues(digits: string): Int8Array {
  const values = new Int8Array(256).fill(-1);
  for (let i = 0; i < digits.length; i += 1) values[digits.charCodeAt(i)] = i;
  return values;
}

/** Longest first, so that no word hides a longer one. */
function wordsOf(words: Readonly<Record<string, WordMeaning>>): readonly Word[] {
  return Object.entries(words)
    .map(([text, means]) => ({ ...nameOf(bytesOf(text)), means }))
    .sort((a, b) => b.bytes.length - a.bytes.length);
}

/** ASCII text as bytes; the schema has refused anything else. */
export function bytesOf(text: string): Uint8Array {
  return Uint8Array.from(text, (c) => c.charCodeAt(0));
}
