import type { OpenQuestion } from "../learnPattern.ts";
import type { PatternField } from "../linePattern.ts";
import type { Column } from "./columns.ts";
import { shared } from "./established.ts";
import type { Progress } from "./progress.ts";

export type LearnedTime = { readonly field: PatternField; readonly rateHz?: number; readonly question?: OpenQuestion };

type TimeUnit = "us" | "ms" | "s";
const perSecond: Record<TimeUnit, number> = { us: 1e6, ms: 1e3, s: 1 };

/**
 * A column that counts lines or tells the gauge's time. A whole number that goes up by one counts lines; by any other
 * step it is taken for milliseconds, a number with decimals for seconds. Where that would mean less than one reading
 * in a second it is asked for, since no clamping could be seen at such a rate.
 * @param unitWord  the word behind the number, where it names a unit of time
 */
export function timeField(
  column: Column,
  progress: Progress | undefined,
  unitWord: string | undefined,
  knownRateHz: number | undefined,
): LearnedTime {
  if (column.kind === "clock") return clockField(column, progress);
  const digits = fixedDigits(column);
  if (progress?.kind !== "clock") return { field: { field: "counter", ...digits } };
  const mark = column.mark;
  const unit = named(unitWord) ?? byRate(progress.step, knownRateHz) ?? usualUnit(progress, mark);
  const rate = perSecond[unit] / progress.step;
  const decimalMark = mark === "" ? {} : { decimalMark: mark };
  const field: PatternField = { field: "time", unit, coarse: progress.coarse, ...digits, ...decimalMark };
  const open =
    named(unitWord) === undefined && byRate(progress.step, knownRateHz) === undefined && !progress.coarse && rate <= 1;
  if (!open) return { field, rateHz: rounded(rate) };
  const question = `A number goes up by ${rounded(progress.step)} from line to line: is it milliseconds or microseconds?`;
  return { field, question: { field: "time", question, proposal: "milliseconds" } };
}

/** A clock that stands over several lines counts seconds: in milliseconds no gauge is fast enough for that. */
function usualUnit({ step, coarse }: Progress, mark: string): TimeUnit {
  return coarse || (mark !== "" && step < 1) ? "s" : "ms";
}

function clockField(column: Column, progress: Progress | undefined): LearnedTime {
  const { mark } = column;
  const coarse = progress === undefined ? mark === "" : progress.coarse;
  const field: PatternField = {
    field: "time",
    unit: "clock",
    coarse,
    ...(mark === "" ? {} : { decimalMark: mark }),
  };
  return progress === undefined ? { field } : { field, rateHz: rounded(1 / progress.step) };
}

const unitWords = new Map<string, TimeUnit>([
  ["ms", "ms"],
  ["msec", "ms"],
  ["us", "us"],
  ["s", "s"],
  ["sec", "s"],
]);
const named = (word: string | undefined): TimeUnit | undefined => unitWords.get(word?.toLowerCase() ?? "");

/** The unit under which the steps agree with the rate that is known. */
function byRate(step: number, rateHz: number | undefined): TimeUnit | undefined {
  if (rateHz === undefined) return undefined;
  return (["ms", "us", "s"] as const).find((unit) => Math.abs(perSecond[unit] / step / rateHz - 1) < 0.1);
}

/** Leading zeros show that the digits are always as many. */
function fixedDigits(column: Column): { digits?: number } {
  const digits = shared(
    column.tokens.map((token) => token.number!.whole.length),
    0.9,
  );
  const filled = column.tokens.some((token) => /^0\d/.test(token.number!.whole));
  return digits !== undefined && filled ? { digits } : {};
}

/** Four figures: what the mean of a few hundred steps is good for. */
const rounded = (value: number) => Number(value.toPrecision(4));
