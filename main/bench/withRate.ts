import type { Parsed } from "../../app/contract/methods.ts";
import { linePatternSchema } from "../../app/gauge/linePattern.ts";
import { nominalRate } from "./nominalRate.ts";

type Raw = Parsed<"link.usePattern">["pattern"];

/**
 * The pattern with the rate its gauge was heard to send at, where neither it nor stamps in the lines tell one: kept without
 * it, the gauge would be read without times at its next connection.
 * @param heardHz  lines a second of the open link; undefined or 0: not told yet
 */
export function withRate(raw: Raw, heardHz: number | undefined): Raw {
  const { rateHz, sends, fields } = linePatternSchema.parse(raw);
  const heard = nominalRate(heardHz);
  const stamped = fields.some((one) => one.field === "time" && !one.coarse);
  if (rateHz !== undefined || stamped || sends !== "always" || heard === undefined) return raw;
  return { ...raw, rateHz: heard };
}
