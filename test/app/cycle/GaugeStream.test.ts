import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { GaugeStream, type ReadingBatch } from "../../../app/cycle/GaugeStream.ts";
import { linePatternSchema } from "../../../app/gauge/linePattern.ts";
import { clampings, usualPattern } from "../../support/gaugeLines.ts";

const { bytes, gauge } = clampings(2, { rateHz: 50 });
const { rateHz } = gauge.options;

function cyclesOf(chunks: Iterable<Uint8Array>): Cycle[] {
  const cycles: Cycle[] = [];
  const stream = new GaugeStream({ pattern: usualPattern, rateHz }, { cycle: (cycle) => cycles.push(cycle) });
  for (const chunk of chunks) stream.push(chunk);
  stream.end();
  return cycles;
}

const whole = cyclesOf([bytes]);

describe("a gauge's stream", () => {
  it("comes to cycles", () => {
    expect(whole).toHaveLength(2);
    expect(whole.every((c) => c.settledN !== undefined && c.settledN > 1000)).toBe(true);
  });

  it("comes to the same cycles, to the bit, however it is cut", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 4000 }), { minLength: 1, maxLength: 12 }), (sizes) => {
        const chunks: Uint8Array[] = [];
        for (let from = 0, k = 0; from < bytes.length; k += 1) {
          const to = Math.min(bytes.length, from + sizes[k % sizes.length]!);
          chunks.push(bytes.subarray(from, to));
          from = to;
        }
        expect(cyclesOf(chunks)).toStrictEqual(whole);
      }),
      { numRuns: 20 },
    );
    expect(cyclesOf(Array.from(bytes, (_, i) => bytes.subarray(i, i + 1)))).toStrictEqual(whole);
  });

  it("hands out its readings in batches with their places and times", () => {
    const seen: number[] = [];
    let next = 0;
    const readings = (batch: ReadingBatch) => {
      expect(batch.fromIndex).toBe(next);
      next += batch.n;
      for (let i = 0; i < batch.n; i += 1) seen.push(batch.timesS[i]!);
    };
    const stream = new GaugeStream({ pattern: usualPattern, rateHz }, { cycle() {}, readings });
    for (let from = 0; from < bytes.length; from += 700) stream.push(bytes.subarray(from, from + 700));
    expect(seen.length).toBe(stream.counts.readings);
    expect(seen[1]! - seen[0]!).toBeCloseTo(1 / rateHz, 9);
    expect(seen.at(-1)).toBeCloseTo((seen.length - 1) / rateHz, 6);
  });

  it("shows overload as Infinity and a rejected line as NaN in a batch, and tells unit and rejections", () => {
    const told: unknown[] = [];
    const stream = new GaugeStream(
      { pattern: usualPattern, rateHz },
      {
        cycle() {},
        readings: (batch) => told.push([...batch.forcesN.subarray(0, batch.n)]),
        unit: (unit, at) => told.push([unit, at]),
        rejected: (reason) => told.push(reason),
      },
    );
    stream.push(Buffer.from("     1.50 kN\r\n       OL kN\r\n     xxxx kN\r\n"));
    expect(told).toEqual([["kN", 0], "number", [1500, Number.POSITIVE_INFINITY, Number.NaN]]);
  });

  it("is cut by a gap, and begins anew with whole lines", () => {
    const cycles: Cycle[] = [];
    const stream = new GaugeStream({ pattern: usualPattern, rateHz }, { cycle: (cycle) => cycles.push(cycle) });
    stream.push(bytes.subarray(0, 14 * 7 * rateHz));
    stream.gap();
    expect(cycles.map((c) => c.flags.includes("cut"))).toEqual([true]);
  });

  it("refuses numbers without a unit", () => {
    const bare = linePatternSchema.parse({ version: 1, terminator: "any", fields: [{ field: "force" }] });
    expect(() => new GaugeStream({ pattern: bare }, { cycle() {} })).toThrow(RangeError);
  });
});
