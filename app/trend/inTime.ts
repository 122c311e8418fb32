import type { CheckPoint } from "./History.ts";

/** Checks in the order of time. Mostly they are already, and then they are not copied. */
export function inTime(points: readonly CheckPoint[]): readonly CheckPoint[] {
  for (let i = 1; i < points.length; i += 1) {
    if (points[i]!.atMs < points[i - 1]!.atMs) return [...points].sort((a, b) => a.atMs - b.atMs);
  }
  return points;
}
