import { parseDecimal } from "../../app/quantity/parseForce.ts";

/**
 * A number as people type it, decimal comma or point, with the minus of a keyboard or of a text. Undefined for an empty
 * field; NaN is never answered: what cannot be read is `"unreadable"`.
 */
export function parseNumber(text: string): number | undefined | "unreadable" {
  if (text.trim() === "") return undefined;
  return parseDecimal(text.replace(/\u2212/g, "-")) ?? "unreadable";
}
