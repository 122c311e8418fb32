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
  const parts = /^\s*([+-]?\s*[\d.,' ]*\d[.,]?(?:e[+-]?\d+)?)\s*([^\d\s].*?)?\s*$/i.exec(text);
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

/**
 * A plain decimal number as people write it, point or comma, thousands in groups of three; undefined for
 * anything else. Both marks present: the last is the decimal mark.
 */
export function parseDecimal(text: string): number | undefined {
  const tight = text.trim().replace(/^([+-])\s+/, "$1");
  const grouped = /^[+-]?\d{1,3}(?:([ '’,.])\d{3})(?:\1\d{3})*(?:[.,]\d+)?$/.exec(tight);
  let plain = tight;
  if (grouped !== null) {
    const mark = grouped[1]!;
    const others = [...tight].filter((c) => c === "." || c === ",").join("");
    // One comma or point with three digits after it is a decimal mark: 17,925 kN is common on the shop floor.
    const decimal = (mark === "," || mark === ".") && others.length === 1;
    if (!decimal && others.at(-1) === mark && others.length > 1 && new Set(others).size > 1) return undefined;
    if (!decimal) plain = tight.split(mark).join("");
  }
  plain = plain.replace(",", ".");
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,3})?$/i.test(plain)) return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value : undefined;
}
