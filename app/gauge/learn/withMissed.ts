import { LineDecoder } from "../LineDecoder.ts";
import type { LinePattern } from "../linePattern.ts";
import type { LearnedForm } from "./buildForm.ts";
import { trialOf } from "./mainForm.ts";
import type { Sample } from "./readSample.ts";
import { type SampleLine, textOf, whole } from "./sampleLines.ts";

/** Lines added at most; what a gauge says for a while is said in far fewer. */
const missedLimit = 2000;

/**
 * A long sample is learned from pieces of it, and may say something between them that no piece shows: an overload, another
 * unit for a minute. Lines the first pattern does not read join the sample, where they come in a row; damaged ones stand alone.
 */
export function withMissed(bytes: Uint8Array, sample: Sample, pattern: LinePattern, form: LearnedForm): Sample {
  if (bytes.length <= whole) return sample;
  const start = (sample.lines.at(-1)?.order ?? 0) + 1000; // a jump, so that no step is taken across
  const missed: SampleLine[] = [];
  const decoder = new LineDecoder(trialOf(pattern, form));
  let order = 0;
  let last: SampleLine | undefined;
  const count = () => {
    order += 1;
  };
  decoder.push(bytes, {
    reading: count,
    aside: count,
    rejected: (reason) => {
      order += 1;
      if (reason === "tooLong" || reason === "notAscii" || reason === "parity" || missed.length >= missedLimit) return;
      const line = { text: textOf(decoder.rawBytes), order: start + order };
      if (last !== undefined && line.order - last.order <= 2)
        missed.push(...(missed.at(-1) === last ? [line] : [last, line]));
      last = line;
    },
  });
  return missed.length === 0 ? sample : { ...sample, lines: [...sample.lines, ...missed] };
}
