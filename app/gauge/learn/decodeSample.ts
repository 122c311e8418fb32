import type { ForceUnit } from "../../quantity/forceUnits.ts";
import { LineDecoder } from "../LineDecoder.ts";
import type { DecodedLine } from "../learnPattern.ts";
import type { LinePattern } from "../linePattern.ts";
import type { ReadingSink } from "../ReadingSink.ts";

export type DecodedSample = {
  readonly decoded: readonly DecodedLine[];
  readonly readings: number;
  readonly asides: number;
  readonly rejected: number;
};

/**
 * The whole sample through the decoder, each line beside its raw text.
 * @param known  false while the unit of bare numbers, or what kg means, has yet to be told: no newtons are given
 * @param keep  lines kept; all are counted
 */
export function decodeSample(bytes: Uint8Array, pattern: LinePattern, known: boolean, keep: number): DecodedSample {
  const decoded: DecodedLine[] = [];
  const decoder = new LineDecoder(pattern);
  let unit: ForceUnit | undefined;
  const add = (line: Omit<DecodedLine, "raw">) => {
    if (decoded.length < keep) decoded.push({ raw: decoder.rawLine, ...line });
  };
  const sink: ReadingSink = {
    reading: (forceN, state, stampS) => {
      const force = known ? { unit, forceN } : {};
      const figure = state === "overload" ? {} : { value: decoder.value, ...force };
      add({ ...figure, state, ...(Number.isNaN(stampS) ? {} : { stampS }) });
    },
    rejected: (reason) => add({ rejected: reason }),
    aside: (what) => add({ aside: what }),
    unit: (next) => {
      unit = next;
    },
  };
  decoder.push(bytes, sink);
  decoder.end(sink);
  const { readings, asides, rejected } = decoder.counts;
  return { decoded, readings, asides, rejected: Object.values(rejected).reduce((sum, n) => sum + n, 0) };
}
