import { learnPattern } from "../../app/gauge/learnPattern.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import { nominalRate } from "./nominalRate.ts";

const ENOUGH_CONFIDENCE = 0.8;

/**
 * The pattern that some seconds of a stream teach without a question to the user: "asks" where one must be answered,
 * undefined while there is not enough. Noise at a wrong setting can be anything, and what the learner stumbles on is no
 * pattern and must not end the program.
 */
export function autoPattern(
  { bytes, durationS }: { readonly bytes: Uint8Array; readonly durationS: number | undefined },
  onFault: (cause: unknown) => void,
): LinePattern | "asks" | undefined {
  try {
    const learned = learnPattern(bytes, { durationS });
    if (learned.kind !== "learned" || learned.confidence < ENOUGH_CONFIDENCE) return undefined;
    if (learned.undecided.some((open) => open.field !== "rate")) return "asks";
    // The rate is no guess here: it was measured while listening.
    const measuredHz = Number(learned.undecided.find((open) => open.field === "rate")?.proposal);
    return { ...learned.pattern, rateHz: learned.pattern.rateHz ?? nominalRate(measuredHz) };
  } catch (cause) {
    onFault(cause);
    return undefined;
  }
}
