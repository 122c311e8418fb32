import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stripColumns } from "../../../renderer/chart/strip/stripColumns.ts";
import { StripBuffer } from "../../../renderer/state/StripBuffer.ts";

function stripOf(values: readonly number[], rateHz: number): StripBuffer {
  const strip = new StripBuffer(20_000);
  strip.push({ t: values.map((_, i) => i / rateHz), forceN: [...values], timed: true });
  return strip;
}

describe("stripColumns", () => {
  it("keeps least and greatest of any stream, in order of time, in at most four points a column", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1e6, max: 1e6 }), { minLength: 1, maxLength: 3_000 }), (values) => {
        const strip = stripOf(values, 100);
        const points = stripColumns(strip, 0, 100, 36);
        const t = [...points.t.subarray(0, points.count)];
        const forces = [...points.forceN.subarray(0, points.count)];
        expect(Math.max(...forces)).toBe(Math.max(...values));
        expect(Math.min(...forces)).toBe(Math.min(...values));
        expect(t).toEqual(t.toSorted((a, b) => a - b));
        expect(points.count).toBeLessThanOrEqual(400);
      }),
      { numRuns: 60 },
    );
  });

  it("begins with the last reading before the span, so that the line enters from the left", () => {
    const points = stripColumns(stripOf([1, 2, 3, 4, 5, 6], 1), 2.5, 10, 4);
    expect([...points.t.subarray(0, points.count)]).toEqual([2, 3, 4, 5]);
  });
});
