import type { ForceUnit } from "../quantity/forceUnits.ts";
import { addOthers } from "./learn/addOthers.ts";
import { unitOf } from "./learn/columns.ts";
import { decodeSample } from "./learn/decodeSample.ts";
import { mainForm, trialOf } from "./learn/mainForm.ts";
import { questionsOf } from "./learn/questions.ts";
import { nothing, readSample } from "./learn/readSample.ts";
import { withMissed } from "./learn/withMissed.ts";
import type { LinePattern } from "./linePattern.ts";
import type { ReadingState, RejectReason } from "./ReadingSink.ts";

/** What the caller knows beforehand. */
export type LearnHints = {
  /** The unit of bare numbers; for kg, lb and the like it is the user's word that they mean force. */
  readonly unit?: ForceUnit | undefined;
  readonly rateHz?: number | undefined;
  /** How long the sample took to arrive, seconds: the rate is asked for with a proposal. */
  readonly durationS?: number | undefined;
  /** Lines kept in `decoded`; default 50,000. */
  readonly keepLines?: number | undefined;
};

/** One thing the sample cannot tell. */
export type OpenQuestion = {
  readonly field: "unit" | "force" | "time" | "counter" | "status" | "checksum" | "rate";
  readonly question: string;
  /** What the pattern says meanwhile, or what the sample makes likely. */
  readonly proposal?: string | undefined;
};

/** One line of the sample as the pattern reads it. Control characters in `raw` stand as <STX>. */
export type DecodedLine = {
  readonly raw: string;
  /** The figure as written, undefined for what is no figure. */
  readonly value?: number | undefined;
  /** Undefined while the unit is not known. */
  readonly unit?: ForceUnit | undefined;
  readonly forceN?: number | undefined;
  readonly state?: ReadingState | undefined;
  readonly stampS?: number | undefined;
  /** Set for lines that are no readings. */
  readonly aside?: "echo" | "status" | undefined;
  readonly rejected?: RejectReason | undefined;
};

export type LearnResult =
  | {
      readonly kind: "learned";
      readonly pattern: LinePattern;
      /** 0 to 1: how much of the sample the pattern reads, and how much sample there was. */
      readonly confidence: number;
      readonly decoded: readonly DecodedLine[];
      readonly undecided: readonly OpenQuestion[];
      readonly readings: number;
      readonly rejected: number;
    }
  | { readonly kind: "torque"; readonly unit: string; readonly reason: string }
  | { readonly kind: "nothing"; readonly reason: string; readonly lineEnds: boolean };

/** Lines kept in `decoded` unless the caller says otherwise. */
const keepLines = 50_000;

/**
 * Proposes a line pattern from a few seconds of stream or a pasted sample. The largest group of lines alike gives the
 * main form; what it does not read is looked through for overload words, echoes and further forms; then the whole sample
 * is decoded by what was learned. Damaged and cut lines do no harm while most are whole. What the sample cannot tell is
 * asked in `undecided`, never guessed silently.
 */
export function learnPattern(bytes: Uint8Array, hints: LearnHints = {}): LearnResult {
  const sample = readSample(bytes);
  if ("kind" in sample) return sample;
  const first = mainForm(sample, hints);
  if ("kind" in first) return first;
  const whole = withMissed(bytes, sample, addOthers(first, sample), first.form);
  const main = whole === sample ? first : mainForm(whole, hints);
  if ("kind" in main) return main;
  const pattern = addOthers(main, whole);
  const known = hints.unit !== undefined || unitOf(main.form.choice.unit)?.kind === "force";
  const { decoded, readings, asides, rejected } = decodeSample(
    bytes,
    trialOf(pattern, main.form),
    known,
    hints.keepLines ?? keepLines,
  );
  const lines = readings + rejected;
  if (readings === 0 || readings < 0.5 * lines) return nothing("most lines follow no form that could be read", true);
  const undecided = questionsOf(
    main.form,
    pattern,
    hints,
    main.check,
    decoded.every((line) => line.state !== "live"),
  );
  const sure = undecided.some((open) => open.field === "force") ? 0.6 : 1;
  const confidence = (sure * ((readings + asides) / (lines + asides)) * readings) / (readings + 3);
  return { kind: "learned", pattern, confidence, decoded, undecided, readings, rejected };
}
