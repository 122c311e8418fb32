import type { Cycle, Rest, Waveform } from "../../../app/cycle/Cycle.ts";
import { CycleDetector, type DetectorOptions } from "../../../app/cycle/CycleDetector.ts";
import type { ReadingState } from "../../../app/gauge/ReadingSink.ts";
import { Random } from "../../../simulator/physics/Random.ts";

/** One reading of a test stream: a force, or what else a line can be. */
export type Line =
  | number
  | "rejected"
  | "overload"
  | { readonly forceN: number; readonly state?: ReadingState; readonly stampS?: number };

export type Fed = { readonly cycles: Cycle[]; readonly waveforms: Waveform[]; readonly closing: Rest | undefined };

/** Feeds a stream to a detector and ends it. */
export function feed(lines: Iterable<Line>, options: DetectorOptions = { rateHz: 100 }): Fed {
  const cycles: Cycle[] = [];
  const waveforms: Waveform[] = [];
  const detector = new CycleDetector(options, (cycle, waveform) => {
    cycles.push(cycle);
    waveforms.push(waveform);
  });
  feedInto(detector, lines);
  const closing = detector.restNow;
  detector.end();
  return { cycles, waveforms, closing };
}

export function feedInto(detector: CycleDetector, lines: Iterable<Line>): void {
  for (const line of lines) {
    if (line === "rejected") detector.rejected();
    else if (line === "overload") detector.push(0, "overload", Number.NaN);
    else if (typeof line === "number") detector.push(line, "live", Number.NaN);
    else detector.push(line.forceN, line.state ?? "live", line.stampS ?? Number.NaN);
  }
}

/** A level that lasts, with 5 N of repeatable noise unless said otherwise. */
export function level(forceN: number, n: number, sigmaN = 5, seed = forceN + n): number[] {
  const random = new Random(seed);
  return Array.from({ length: n }, () => forceN + sigmaN * random.normal());
}

/** From one level to another in equal steps, both left out. */
export function ramp(fromN: number, toN: number, n: number): number[] {
  return Array.from({ length: n }, (_, i) => fromN + ((toN - fromN) * (i + 1)) / (n + 1));
}

/** Rest, a clamping of `forceN` held for `seconds`, rest; at 100 readings a second. */
export function clamping(forceN: number, seconds = 4, zeroN = 0): number[] {
  return [
    ...level(zeroN, 200),
    ...ramp(zeroN, zeroN + forceN, 3),
    ...level(zeroN + forceN, Math.round(100 * seconds)),
    ...ramp(zeroN + forceN, zeroN, 4),
    ...level(zeroN, 200),
  ];
}
