import type { LearnView, LineView } from "../../app/contract/linkViews.ts";
import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import { decodeSample } from "../../app/gauge/learn/decodeSample.ts";
import { type DecodedLine, type LearnHints, learnPattern } from "../../app/gauge/learnPattern.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import { forceUnits } from "../../app/quantity/forceUnits.ts";
import type { Session } from "../link/Session.ts";

/** Lines a page is shown. */
const SHOWN = 60;
const TAIL_BYTES = 8_192;

/**
 * Learns from a pasted sample, else from what the open link has sent in the last seconds.
 * @throws AppError  `refused` when there is neither
 */
export function learnFrom(session: Session | undefined, { sample, answers }: Parsed<"link.learn">): LearnView {
  if (sample !== undefined) {
    return learnView({ bytes: Buffer.from(sample, "latin1"), durationS: undefined }, answers ?? {}, undefined);
  }
  if (session === undefined) {
    throw new AppError("refused", "There is nothing to learn from. Connect the gauge, or paste lines it has sent.", {
      key: "nothingToLearn",
    });
  }
  return learnView(session.tail(), answers ?? {}, session.status().counters.lineRateHz);
}

/** What a sample teaches, with the user's answers to earlier questions. */
function learnView(
  tail: { readonly bytes: Uint8Array; readonly durationS: number | undefined },
  answers: Readonly<Record<string, string>>,
  lineRateHz: number | undefined,
): LearnView {
  const learned = learnPattern(tail.bytes, { ...hintsOf(answers), durationS: tail.durationS, keepLines: SHOWN });
  if (learned.kind !== "learned") {
    return {
      pattern: undefined,
      confidence: 0,
      lines: [],
      undecided: [],
      rateHz: lineRateHz,
      refused: learned.reason,
      setting: undefined,
    };
  }
  return {
    pattern: learned.pattern,
    confidence: learned.confidence,
    lines: learned.decoded.map(lineView),
    undecided: learned.undecided.map(({ field, question }) => ({ field, question })),
    rateHz: learned.pattern.rateHz ?? lineRateHz,
    refused: undefined,
    setting: undefined,
  };
}

function hintsOf(answers: Readonly<Record<string, string>>): LearnHints {
  const unit = forceUnits.find((u) => u === answers.unit);
  const rateHz = Number(answers.rate?.replace(",", "."));
  return { unit, rateHz: rateHz > 0 ? rateHz : undefined };
}

/** The last lines as the pattern in use reads them; none while there is no pattern. */
export function tailLines(bytes: Uint8Array, pattern: LinePattern | undefined): readonly LineView[] {
  if (pattern === undefined) return [];
  const last = bytes.subarray(Math.max(0, bytes.length - TAIL_BYTES));
  return decodeSample(last, pattern, true, TAIL_BYTES).decoded.slice(-SHOWN).map(lineView);
}

function lineView(line: DecodedLine): LineView {
  return { raw: line.raw, forceN: line.forceN, state: line.state, rejected: line.rejected };
}
