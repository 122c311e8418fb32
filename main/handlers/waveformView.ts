import type { WaveformView } from "../../app/contract/recordViews.ts";
import type { Waveform } from "../store/waveform.ts";

/** A stored cycle's readings for a chart: net of its zero, times from its own first reading; places without a reading are left out. */
export function waveformView(cycleId: string, { forceN, time }: Waveform, zeroN: number): WaveformView {
  const at = timeOf(time);
  const t: number[] = [];
  const net: number[] = [];
  for (let i = 0; i < forceN.length; i += 1) {
    const reading = forceN[i]!;
    const when = at(i);
    if (!Number.isFinite(reading) || !Number.isFinite(when)) continue;
    t.push(when);
    net.push(reading - zeroN);
  }
  const from = t[0] ?? 0;
  return { cycleId, timed: time !== undefined, t: t.map((when) => when - from), forceN: net };
}

function timeOf(time: Waveform["time"]): (place: number) => number {
  if (time === undefined) return (place) => place;
  if (time instanceof Float64Array) return (place) => time[place] ?? Number.NaN;
  return (place) => place * time.stepS;
}
