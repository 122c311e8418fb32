import type { Waveform as CycleWaveform } from "../../app/cycle/Cycle.ts";
import type { Waveform } from "../store/waveform.ts";

/**
 * A cycle's readings in the form the store packs. A stretch that was left out of a very long hold stays out: its
 * places are closed up and the times say where they were.
 */
export function packable({ fromIndex, values, times, rateHz, gapAt, skipped }: CycleWaveform): Waveform {
  if (times !== undefined) return { fromIndex, forceN: values, time: times };
  if (rateHz === undefined) return { fromIndex, forceN: values, time: undefined };
  const stepS = 1 / rateHz;
  if (skipped === 0) return { fromIndex, forceN: values, time: { startS: fromIndex * stepS, stepS } };
  const at = Float64Array.from(values, (_, i) => (fromIndex + i + (i >= gapAt ? skipped : 0)) * stepS);
  return { fromIndex, forceN: values, time: at };
}
