import { learnPattern } from "../../../app/gauge/learnPattern.ts";
import type { LinePattern } from "../../../app/gauge/linePattern.ts";
import { usualGauge } from "../../../simulator/gauge/GaugeOptions.ts";
import type { LineFormatName } from "../../../simulator/gauge/lineFormats.ts";
import { SimulatedGauge } from "../../../simulator/gauge/SimulatedGauge.ts";
import { Random } from "../../../simulator/physics/Random.ts";

/** One clamping as it was, with the bytes of the stream that tell of it. */
export type TrialClamping = {
  readonly settledN: number;
  /** First byte of its first line, and the byte after the last line of its release. */
  readonly fromByte: number;
  readonly toByte: number;
};

export type TrialStream = {
  readonly bytes: Uint8Array;
  readonly rateHz: number;
  readonly pattern: LinePattern;
  readonly clampings: readonly TrialClamping[];
  /** Stream byte at a time, seconds. */
  readonly byteAt: (s: number) => number;
};

export type TrialOptions = {
  readonly seed: number;
  readonly seconds: number;
  readonly rateHz: number;
  /** Chance of each byte to be altered, lost or doubled. */
  readonly corruptPerByte: number;
};

const formats: readonly LineFormatName[] = [
  "numberUnit",
  "checksum",
  "status",
  "milliseconds",
  "decimalComma",
  "counter",
  "bare",
];
const FALL_S = 0.15; // of the simulated gauge's release

/** A stream of clampings with rests of varied length, damaged on its way; and what it really was. */
export function trialStream({ seed, seconds, rateHz, corruptPerByte }: TrialOptions): TrialStream {
  const format = formats[seed % formats.length]!;
  const random = new Random(seed);
  const gauge = new SimulatedGauge({ ...usualGauge, seed, rateHz, format, zeroN: random.between(-80, 80) });
  const parts: Uint8Array[] = [];
  const ends: number[] = []; // stream bytes at the end of each hundredth of a second
  let length = 0;
  const run = (s: number) => {
    for (let i = 0; i < Math.round(s * 100); i += 1) {
      const part = gauge.advance(rateHz / 100);
      length += part.length;
      parts.push(part);
      ends.push(length);
    }
  };
  run(4);
  const pattern = patternOf(Buffer.concat(parts), rateHz);
  gauge.corruption.perByte = corruptPerByte;
  while (gauge.tS < seconds) {
    run(random.between(2, 5));
    gauge.clamp();
    run(random.between(2.5, 6));
    gauge.release();
  }
  run(4);
  const byteAt = (s: number) => ends[Math.min(ends.length, Math.max(0, Math.round(s * 100))) - 1] ?? 0;
  const clampings = gauge.truth.map(({ settledN, onS, offS }) => ({
    settledN,
    fromByte: byteAt(onS),
    toByte: byteAt(offS! + FALL_S + 0.01),
  }));
  return { bytes: Buffer.concat(parts), rateHz, pattern, clampings, byteAt };
}

function patternOf(clean: Uint8Array, rateHz: number): LinePattern {
  const learned = learnPattern(clean, { unit: "kN", rateHz });
  if (learned.kind !== "learned") throw new Error(`the trial's lines were not learned: ${JSON.stringify(learned)}`);
  return learned.pattern;
}
