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

/** Judges by learning a pattern: only the right rate gives lines with a number in them, and enough of them. */
export function judgeSample(bytes: Uint8Array, durationS: number): SampleJudgement {
  const learned = learnFrom(bytes, durationS);
  if (learned.kind === "torque") return { confidence: 1, sends: undefined }; // legible; what it says is refused later
  if (learned.kind === "nothing") return { confidence: 0, sends: undefined };
  const { parity } = learned.pattern;
  const { confidence } = learned;
  if (parity === "none") return { confidence, sends: undefined };
  // "mark": the eighth bit received is the first stop bit of a character of seven bits.
  if (parity === "mark") return { confidence, sends: { dataBits: 7, parity: "none", stopBits: 2 } };
  return { confidence, sends: { dataBits: 7, parity, stopBits: 1 } };
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
