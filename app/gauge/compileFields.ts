import { forceUnits } from "../quantity/forceUnits.ts";
import type { ChecksumMethod } from "./checksums.ts";
import { type ControlName, controlCode } from "./controlCharacters.ts";
import type { PatternField, WordMeaning } from "./linePattern.ts";
import { formOf, looseNumber, type NumberForm } from "./numberForm.ts";

export type Word = { readonly bytes: Uint8Array; readonly means: WordMeaning };

/** What one field does to the line. Numbers for the reading loop's switch. */
export const op = {
  byte: 0,
  text: 1,
  blanks: 2,
  status: 3,
  force: 4,
  unit: 5,
  digits: 6,
  time: 7,
  clock: 8,
  number: 9,
  letters: 10,
  hex: 11,
  date: 12,
  any: 13,
  checksum: 14,
} as const;

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
  readonly hex: boolean;
  readonly method: ChecksumMethod;
  readonly complement: boolean;
  readonly first: number;
  readonly last: number;
};

const blank: Step = {
  op: op.byte,
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
  hex: false,
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
    return { ...step, form: { ...step.form, giveBack: checksumLength[next.as] } };
  });
}

const perSecond = { s: 1, ms: 1000, us: 1_000_000, clock: 1 } as const;

function stepOf(field: PatternField): Step {
  switch (field.field) {
    case "text": {
      const bytes = bytesOf(field.text);
      return bytes.length === 1 ? { ...blank, op: op.byte, byte: bytes[0]! } : { ...blank, op: op.text, bytes };
    }
    case "control":
      return { ...blank, op: op.byte, byte: controlCode(field.name as ControlName) };
    case "blanks":
      return { ...blank, op: op.blanks, least: field.least, most: field.most };
    case "status":
      return { ...blank, op: op.status, words: wordsOf(field.words), optional: field.optional };
    case "force":
      return { ...blank, op: op.force, form: formOf(field), words: wordsOf(field.instead), held: field.held };
    case "unit":
      return {
        ...blank,
        op: op.unit,
        optional: field.optional,
        units: (field.units ?? forceUnits).map((unit) => forceUnits.indexOf(unit)),
      };
    case "counter":
      return { ...blank, op: op.digits, least: field.digits ?? 1, most: field.digits ?? 15 };
    case "time": {
      const form = { ...looseNumber, mark: field.decimalMark?.charCodeAt(0) ?? -1, wholeDigits: field.digits ?? -1 };
      return {
        ...blank,
        op: field.unit === "clock" ? op.clock : op.time,
        form,
        perSecond: perSecond[field.unit],
        coarse: field.coarse,
      };
    }
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
        op: op.checksum,
        method: field.method,
        least: checksumLength[field.as],
        byte: field.as === "hex" ? 0x61 : 0x41,
        hex: field.as === "hex" || field.as === "HEX",
        complement: field.complement,
        first: field.first - 1,
        last: field.last - 1,
      };
  }
}

const ignoredOps = { number: op.number, word: op.letters, hex: op.hex, date: op.date, any: op.any } as const;
const checksumLength = { hex: 2, HEX: 2, decimal3: 3, digit: 1 } as const;

/** Longest first, so that no word hides a longer one. */
function wordsOf(words: Readonly<Record<string, WordMeaning>>): readonly Word[] {
  return Object.entries(words)
    .map(([text, means]) => ({ bytes: bytesOf(text), means }))
    .sort((a, b) => b.bytes.length - a.bytes.length);
}

/** ASCII text as bytes; the schema has refused anything else. */
export function bytesOf(text: string): Uint8Array {
  return Uint8Array.from(text, (c) => c.charCodeAt(0));
}
