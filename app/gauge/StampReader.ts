import type { Step } from "./compileFields.ts";
import { FIELDS } from "./refusals.ts";
import { isDigit, scanClock } from "./scanText.ts";

/** Reads the gauge's own time of a line, in seconds as it was sent: it may wrap. */
export class StampReader {
  seconds = Number.NaN;

  /** A number that counts a unit of time. Answers the position behind it, or the reason below 0. */
  take(step: Step, line: Uint8Array, at: number, to: number): number {
    let p = at;
    let figure = 0;
    while (p < to && isDigit(line[p]!)) figure = figure * 10 + line[p++]! - ZERO;
    const digits = p - at;
    if (digits < step.least || digits > step.most) return -FIELDS;
    let scale = step.perSecond;
    if (p + 1 < to && line[p] === step.byte && isDigit(line[p + 1]!)) {
      for (p += 1; p < to && isDigit(line[p]!); p += 1) {
        figure = figure * 10 + line[p]! - ZERO;
        scale *= 10;
      }
    }
    if (!step.coarse) this.seconds = figure / scale; // whole numbers both: one rounding
    return p;
  }

  /** A time of day. */
  takeClock(step: Step, line: Uint8Array, at: number, to: number): number {
    const next = scanClock(line, at, to, step.byte);
    if (next < 0) return -FIELDS;
    if (!step.coarse) this.seconds = clockSeconds(line, at, next);
    return next;
  }
}

/** Seconds since midnight of what `scanClock` found. */
function clockSeconds(line: Uint8Array, from: number, to: number): number {
  let total = 0;
  let part = 0;
  let parts = 0;
  let p = from;
  for (; p < to && (isDigit(line[p]!) || line[p] === COLON); p += 1) {
    if (line[p] !== COLON) part = part * 10 + line[p]! - ZERO;
    else {
      total = (total + part) * 60;
      part = 0;
      parts += 1;
    }
  }
  total += part;
  if (parts === 1) total *= 60; // hours and minutes only
  let fraction = 0;
  let scale = 1;
  for (p += 1; p < to; p += 1) {
    fraction = fraction * 10 + line[p]! - ZERO;
    scale *= 10;
  }
  return (total * scale + fraction) / scale; // one rounding
}

const ZERO = 0x30;
const COLON = 0x3a;
