import { type ForceUnit, toNewtons } from "./forceUnits.ts";
import { parseForceUnit } from "./parseForceUnit.ts";

/** A force as a person typed it. `bare`: a number without a unit; whoever asked knows what to do with it. */
export type ParsedForce =
  | { readonly kind: "force"; readonly forceN: number; readonly value: number; readonly unit: ForceUnit }
  | { readonly kind: "mass"; readonly value: number; readonly unit: ForceUnit; readonly reason: string }
  | { readonly kind: "torque"; readonly reason: string }
  | { readonly kind: "bare"; readonly value: number }
  | { readonly kind: "unreadable"; readonly reason: string };

/**
 * Reads "30 kN", "17,92kN", "-1 234.5 N". A comma is a decimal comma unless a point stands after it; blanks
 * may group thousands. What is no plain decimal number (hexadecimal, Infinity, two points) is unreadable.
 */
export function parseForce(text: string): ParsedForce {
  const parts = /^\s*([+-]?\s*[\d.,' ]*\d[.,]?(?:e[+-]?\d+)?)\s*([^\d\s+-].*?)?\s*$/i.exec(text);
  const value = parts === null ? undefined : parseDecimal(parts[1]!);
  if (value === undefined)
    return { kind: "unreadable", reason: `"${text}" is no number with a force unit, such as 30 kN` };
  const unitText = parts![2];
  if (unitText === undefined) return { kind: "bare", value };
  const meaning = parseForceUnit(unitText);
  if (meaning.kind === "force")
    return { kind: "force", forceN: toNewtons(value, meaning.unit), value, unit: meaning.unit };
  if (meaning.kind === "torque") return meaning;
  if (meaning.kind === "mass") {
    return {
      kind: "mass",
      value,
      unit: meaning.unit,
      reason: `${unitText} is a mass; write ${meaning.unit} where a force is meant`,
    };
  }
  return { kind: "unreadable", reason: `"${unitText}" is no force unit known here; use N, daN, kN, lbf, kip or kgf` };
}

/** Ways of writing a number; the first captures what groups thousands. */
const ungrouped = /^(?:\d+[.,]?\d*|[.,]\d+)(?:e[+-]?\d{1,3})?$/i;
const groupedByBlank = /^\d{1,3}(?:([ '’])\d{3})(?:\1\d{3})*(?:[.,]\d+)?$/;
// One comma or point alone is a decimal mark, three digits behind it or not: 17,925 kN is common on the shop floor.
const groupedByMark =
  /^\d{1,3}(?:(,)\d{3}(?:(?:,\d{3})*\.\d+|(?:,\d{3})+)|(\.)\d{3}(?:(?:\.\d{3})*,\d+|(?:\.\d{3})+))$/;

/**
 * A plain decimal number as people write it, point or comma, thousands in groups of three; undefined for
 * anything else. Both marks present: the last is the decimal mark.
 */
export function parseDecimal(text: string): number | undefined {
  const [, sign, body] = /^\s*([+-]?)\s*(.*?)\s*$/s.exec(text)!;
  const grouped = groupedByBlank.exec(body!) ?? groupedByMark.exec(body!);
  if (grouped === null && !ungrouped.test(body!)) return undefined;
  const mark = grouped?.[1] ?? grouped?.[2];
  const value = Number((mark === undefined ? body! : body!.split(mark).join("")).replace(",", "."));
  return Number.isFinite(value) ? (sign === "-" ? -value : value) : undefined;
}
