import type { NetReading } from "./netReadings.ts";

/** The readings of one step, averaged. */
export type AveragedLoad = {
  readonly level: number;
  readonly reference: number;
  readonly net: number;
  readonly n: number;
};

/** Means of each step, by rising load; a single reading keeps its bits. */
export function averagedLoads(loads: readonly NetReading[]): readonly AveragedLoad[] {
  return [...Map.groupBy(loads, (l) => l.level)]
    .sort(([a], [b]) => a - b)
    .map(([level, same]) => ({
      level,
      reference: mean(same.map((l) => l.reading.reference)),
      net: mean(same.map((l) => l.net)),
      n: same.length,
    }));
}

/** Equal values keep their bits too: a nominal load of 0.1 read three times stays 0.1. */
function mean(values: readonly number[]): number {
  const first = values[0]!;
  return first + values.reduce((sum, v) => sum + (v - first), 0) / values.length;
}
