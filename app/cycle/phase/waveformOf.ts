import type { Waveform } from "../Cycle.ts";
import type { Trace } from "./Trace.ts";

/** Copies the readings of [from, to) out of a trace. */
export function waveformOf(trace: Trace, from: number, to: number): Waveform {
  const gapInside = trace.skipped > 0 && trace.gapAt > from && trace.gapAt < to;
  return {
    fromIndex: trace.placeOf(from),
    values: trace.values.slice(from, to),
    times: trace.times?.slice(from, to),
    rateHz: trace.rateHz,
    gapAt: gapInside ? trace.gapAt - from : 0,
    skipped: gapInside ? trace.skipped : 0,
  };
}
