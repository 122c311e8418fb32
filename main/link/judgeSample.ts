import { ZodError } from "zod";
import type { SerialSetting } from "../../app/contract/linkViews.ts";
import { type LearnResult, learnPattern } from "../../app/gauge/learnPattern.ts";

/** How well bytes read as lines of a gauge. */
export type SampleJudgement = {
  /** 0 to 1. */
  readonly confidence: number;
  /** What the bytes show of the sender's own setting, where it is not the one they were received with. */
  readonly sends: Pick<SerialSetting, "dataBits" | "parity" | "stopBits"> | undefined;
};

/**
 * Judges by learning a pattern: only the right rate gives lines with a number in them, and enough of them. A gauge at
 * rest repeats itself, and so does the noise a wrong rate makes of it; but that noise is full of control characters.
 */
export function judgeSample(bytes: Uint8Array, durationS: number): SampleJudgement {
  const learned = learnFrom(bytes, durationS);
  if (learned.kind === "torque") return { confidence: 1, sends: undefined }; // legible; what it says is refused later
  if (learned.kind === "nothing") return { confidence: 0, sends: undefined };
  const { parity } = learned.pattern;
  const confidence = legibleShare(bytes, parity !== "none") < LEAST_LEGIBLE ? 0 : learned.confidence;
  if (parity === "none") return { confidence, sends: undefined };
  // "mark": the eighth bit received is the first stop bit of a character of seven bits.
  if (parity === "mark") return { confidence, sends: { dataBits: 7, parity: "none", stopBits: 2 } };
  return { confidence, sends: { dataBits: 7, parity, stopBits: 1 } };
}

/** A frame, a checksum and its marks are a few control characters a line at most. */
const LEAST_LEGIBLE = 0.85;

function legibleShare(bytes: Uint8Array, withParity: boolean): number {
  let legible = 0;
  for (const byte of bytes) {
    const code = withParity ? byte & 0x7f : byte;
    if ((code >= 0x20 && code <= 0x7e) || code === 0x0d || code === 0x0a) legible += 1;
  }
  return legible / bytes.length;
}

/** Most settings tried are wrong ones and bring noise; a pattern the schema refuses is none. */
function learnFrom(bytes: Uint8Array, durationS: number): LearnResult {
  try {
    return learnPattern(bytes, { durationS, keepLines: 1 });
  } catch (cause) {
    if (cause instanceof ZodError) return { kind: "nothing", reason: "no lines of a gauge", lineEnds: false };
    throw cause;
  }
}
