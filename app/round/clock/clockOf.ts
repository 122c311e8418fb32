import type { ClockSight, GaugeClock } from "./GaugeClock.ts";

/** A quartz is off by tens of ppm; what has moved more, and more than a minute, was set by hand (common practice, no source). */
const GREATEST_PPM = 500;
const SLACK_MS = 60_000;
/** Stamps are read to the second: over less than a day that is more than a quartz drifts, and no drift is told from it. */
const SHORTEST_FOR_DRIFT_MS = 86_400_000;

/**
 * Offset and drift of a gauge's clock from one look at it now and one at the docking before.
 * @param before  undefined: the first docking; the drift is then unknown and taken as none, as it is within a day of it
 */
export function clockOf(seen: ClockSight, before?: ClockSight): GaugeClock {
  const offsetMs = seen.gaugeMs - seen.pcMs;
  const passed = before === undefined ? 0 : seen.pcMs - before.pcMs;
  if (before === undefined || passed <= 0) return { seen, offsetMs, driftPpm: undefined, setSince: false };
  const gained = offsetMs - (before.gaugeMs - before.pcMs);
  const setSince = Math.abs(gained) > SLACK_MS + (GREATEST_PPM * passed) / 1e6;
  const told = !setSince && passed >= SHORTEST_FOR_DRIFT_MS;
  return { seen, offsetMs, driftPpm: told ? (gained / passed) * 1e6 : undefined, setSince };
}

/** A stamp of the gauge as an instant of the PC's clock: offset and drift taken out, whole milliseconds. */
export function correctedMs({ seen, offsetMs, driftPpm = 0 }: GaugeClock, gaugeMs: number): number {
  const rate = 1 + driftPpm / 1e6;
  // pc = seen.pc + (gauge - seen.gauge) / rate, written so that without drift nothing is rounded.
  const away = gaugeMs - seen.gaugeMs;
  return Math.round(gaugeMs - offsetMs + away * (1 / rate - 1));
}
