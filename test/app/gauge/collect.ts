import type { LineDecoder } from "../../../app/gauge/LineDecoder.ts";
import { type LinePattern, type LinePatternInput, linePatternSchema } from "../../../app/gauge/linePattern.ts";
import type { ReadingSink } from "../../../app/gauge/ReadingSink.ts";

/** A sink that writes every call down, for comparison. */
export function collector(): { readonly calls: string[]; readonly sink: ReadingSink } {
  const calls: string[] = [];
  const sink: ReadingSink = {
    reading: (forceN, state, stampS) => calls.push(`${forceN} ${state}${Number.isNaN(stampS) ? "" : ` @${stampS}`}`),
    rejected: (reason) => calls.push(`rejected ${reason}`),
    unit: (unit) => calls.push(`unit ${unit}`),
    aside: (what) => calls.push(`aside ${what}`),
    notice: (notice) => calls.push(`notice ${notice}`),
  };
  return { calls, sink };
}

/** Feeds text in one piece and answers the calls it made. */
export function decoded(decoder: LineDecoder, text: string): string[] {
  const { calls, sink } = collector();
  decoder.push(
    Uint8Array.from(text, (c) => c.charCodeAt(0)),
    sink,
  );
  return calls;
}

/** A pattern written short. */
export const pattern = (fields: LinePatternInput["fields"], rest: Partial<LinePatternInput> = {}): LinePattern =>
  linePatternSchema.parse({ version: 1, terminator: "CRLF", ...rest, fields });
