import { parseDecimal } from "../../app/quantity/parseForce.ts";

/**
 * A number as people type it, decimal comma or point, with the minus of a keyboard or of a text. Undefined for an empty
 * field; NaN is never answered: what cannot be read is `"unreadable"`.
 */
export function parseNumber(text: string): number | undefined | "unreadable" {
  if (text.trim() === "") return undefined;
  return parseDecimal(text.replace(/\u2212/g, "-")) ?? "unreadable";
}

/** A stored number as a field shows it, with no more digits than it has; empty where there is none. @param digits  significant ones at most */
export function figureText(value: number | null | undefined, digits = 10): string {
  return value === null || value === undefined ? "" : String(Number(value.toPrecision(digits)));
}
