import type { Cycle, Rest, Waveform } from "../../app/cycle/Cycle.ts";

/** The same cycle so many places later in the stream. Its times stay: they are the stream's own. */
export function shiftedCycle(cycle: Cycle, by: number): Cycle {
  if (by === 0) return cycle;
  const { settledWindow: w } = cycle;
  return {
    ...cycle,
    startIndex: cycle.startIndex + by,
    endIndex: cycle.endIndex + by,
    peakIndex: cycle.peakIndex + by,
    settledWindow: w && { ...w, fromIndex: w.fromIndex + by, toIndex: w.toIndex + by },
    restBefore: shiftedRest(cycle.restBefore, by),
    restAfter: shiftedRest(cycle.restAfter, by),
  };
}

export function shiftedWaveform(waveform: Waveform, by: number): Waveform {
  return by === 0 ? waveform : { ...waveform, fromIndex: waveform.fromIndex + by };
}

function shiftedRest(rest: Rest | undefined, by: number): Rest | undefined {
  return rest && { ...rest, atIndex: rest.atIndex + by };
}
