import { isOverloadWord, meaningOf } from "../../gauge/learn/vocabulary.ts";
import { parseDecimal } from "../../quantity/parseForce.ts";
import { parseForceUnit } from "../../quantity/parseForceUnit.ts";
import type { DumpField } from "./DumpFormat.ts";
import { dateParts, parseTime, splitStamp } from "./parseStamp.ts";

type Field = DumpField["field"];

/** Heads of columns as files name them, in English and German; common practice, no source. */
const heads: readonly (readonly [RegExp, Field])[] = [
  [/^(loc(ation)?|place|spindle|machine|ch(an(nel)?)?|channel|ort|platz|spindel|maschine|kanal|stelle)\b/i, "location"],
  [/^(no|nr|num(ber)?|#|index|rec(ord)?|nummer|satz)\b\.?/i, "number"],
  [/^(date ?(and|\/|-)? ?time|timestamp|zeitstempel|zeitpunkt|datum ?(und|\/)? ?(uhr)?zeit)\b/i, "stamp"],
  [/^(date|datum)\b/i, "date"],
  [/^(time|zeit|uhrzeit)\b/i, "time"],
  [/^(unit|einheit)\b/i, "unit"],
  [/^(force|value|reading|kraft|wert|messwert)\b/i, "force"],
  [/^(kind|mode|type|art|modus)\b/i, "kind"],
];

/** What a column holds, by its cells; its head decides where cells allow several things. */
export function columnField(cells: readonly string[], head: string | undefined): Field {
  const filled = cells.filter((cell) => cell !== "");
  const most = (test: (cell: string) => boolean) =>
    filled.length > 0 && filled.filter(test).length >= 0.7 * filled.length;
  const said = head === undefined ? undefined : heads.find(([pattern]) => pattern.test(head.trim()))?.[1];
  if (most((c) => splitStamp(c) !== undefined)) return "stamp";
  if (most((c) => dateParts(c) !== undefined && !(said === "number" || said === "location"))) return "date";
  if (most((c) => parseTime(c) !== undefined)) return "time";
  if (most((c) => /[A-Za-z]/.test(c) && parseForceUnit(c).kind !== "unknown")) return "unit";
  const whole = most((c) => /^\d{1,6}$/.test(c));
  if (whole && said !== undefined && said !== "force") return said === "number" ? "number" : "location";
  if (whole && said === undefined && counts(filled)) return "number";
  if (whole && said === undefined && filled.every((c) => c.length <= 3)) return "location";
  if (most((c) => /^(L|LOC|P|PL|M)\d{1,4}$/i.test(c))) return "location";
  if (most((c) => isForce(c) || isOverloadWord(c))) return "force";
  if (most((c) => meaningOf(c) === "held" || meaningOf(c) === "live" || /^[MPLA]$/.test(c))) return "kind";
  return said === "location" || said === "kind"
    ? said
    : most((c) => /^[A-Za-z#]{1,3}\d{1,5}[.:)]?$/.test(c))
      ? "number"
      : "ignored";
}

function isForce(cell: string): boolean {
  const parts = /^([+-]?[\d.,' ]*\d)\s*([^\d\s].*)?$/.exec(cell);
  return (
    parts !== null &&
    parseDecimal(parts[1]!) !== undefined &&
    (parts[2] === undefined || parseForceUnit(parts[2]).kind !== "unknown")
  );
}

/** Rises or falls from record to record, mostly by one; lines may have been lost. */
function counts(cells: readonly string[]): boolean {
  if (cells.length < 2) return cells[0] === "1" || cells[0] === "001";
  const steps = cells.slice(1).map((cell, i) => Number(cell) - Number(cells[i]!));
  const sign = Math.sign(steps[0]!);
  return sign !== 0 && steps.filter((s) => s * sign > 0 && Math.abs(s) <= MOST_LOST).length >= 0.8 * steps.length;
}

const MOST_LOST = 20;
