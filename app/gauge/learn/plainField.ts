import { controlNames } from "../controlCharacters.ts";
import type { PatternField } from "../linePattern.ts";
import { hangsOn } from "./chooseForce.ts";
import type { Column } from "./columns.ts";
import { type LearnedStatus, statusField } from "./statusField.ts";
import { meaningOf } from "./vocabulary.ts";

/** The field of a column that is neither the force nor its unit, nor a counter or a clock. */
export function plainField(column: Column, columns: readonly Column[], force: Column | undefined): LearnedStatus {
  switch (column.kind) {
    case "mark":
      return { field: markField(column.constant!) };
    case "date":
      return { field: { field: "ignored", what: "date" } };
    case "number":
      return { field: numberField(column, columns[column.index - 1]) };
    case "word":
      return namesOther(column, columns, force) ? { field: fixedWord(column) } : statusField(column);
    default:
      return {
        field:
          column.constant === undefined ? { field: "ignored", what: "any" } : { field: "text", text: column.constant },
      };
  }
}

function markField(text: string): PatternField {
  const code = text.charCodeAt(0);
  if (code >= 0x20 && code < 0x7f) return { field: "text", text };
  return { field: "control", name: code === 0x7f ? "DEL" : controlNames[code]! };
}

function numberField(column: Column, previous: Column | undefined): PatternField {
  if (hangsOn(column, previous)) return { field: "text", text: column.constant! };
  const mark = column.tokens.map((token) => token.number!.mark).find((m) => m !== "");
  return { field: "ignored", what: "number", ...(mark === undefined ? {} : { decimalMark: mark }) };
}

/** Whether a word belongs to a number that is not the force: its name before it or its unit behind it. */
function namesOther(column: Column, columns: readonly Column[], force: Column | undefined): boolean {
  // What says stable or overload is a status word wherever it stands.
  if (!["held", "live", "aside", "other", undefined].includes(meaningOf(column.typical))) return false;
  const isOther = (c: Column | undefined) =>
    c !== undefined && c !== force && (c.kind === "number" || c.kind === "clock");
  const next = columns[column.index + 1];
  const behindMark = next?.kind === "mark" && /^[=:]$/.test(next.constant!) ? columns[column.index + 2] : next;
  if (isOther(behindMark)) return true;
  return isOther(columns[column.index - 1]) && behindMark !== force;
}

const fixedWord = (column: Column): PatternField =>
  column.constant === undefined ? { field: "ignored", what: "word" } : { field: "text", text: column.constant };
