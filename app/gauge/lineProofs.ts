import { controlCode } from "./controlCharacters.ts";
import type { LinePattern, PatternField } from "./linePattern.ts";

/** Whether a line that a pattern reads must have its true beginning, and its true end; the byte all begin with, or -1. */
export type LineProofs = { readonly beginning: boolean; readonly end: boolean; readonly startByte: number };

/**
 * What a pattern can prove of a line whose neighbours are missing. A bare number of any length proves nothing: "2.34"
 * may be all that is left of "12.34". A fixed width, a word, a unit, a control character or a checksum does.
 */
export function lineProofs(pattern: LinePattern): LineProofs {
  const fields = pattern.fields.filter((f) => f.field !== "blanks");
  const checked = pattern.fields.some((f) => f.field === "checksum" && f.first === 1);
  const start = pattern.fields[0]!;
  const startByte = start.field === "control" ? controlCode(start.name) : -1;
  return { beginning: checked || proves(fields[0], true), end: proves(fields.at(-1), false), startByte };
}

function proves(field: PatternField | undefined, beginning: boolean): boolean {
  switch (field?.field) {
    case "control":
    case "text":
    case "checksum":
      return true;
    case "status":
      return !field.optional;
    case "unit":
      return !field.optional && !beginning; // "kN" may have lost its k
    case "counter":
    case "time":
      return field.digits !== undefined;
    case "force": {
      const sized = field.wholeDigits !== undefined || field.width !== undefined;
      return beginning
        ? sized || field.sign === "always" || field.sign === "column"
        : sized && field.decimals?.length === 1;
    }
    default:
      return false;
  }
}
