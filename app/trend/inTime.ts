import type { CoursePoint } from "./History.ts";

/** Checks in the order of time. Mostly they are already, and then they are not copied. */
export function inTime<P extends CoursePoint>(points: readonly P[]): readonly P[] {
  for (let i = 1; i < points.length; i += 1) {
    if (points[i]!.atMs < points[i - 1]!.atMs) return [...points].sort((a, b) => a.atMs - b.atMs);
  }
  return points;
}
