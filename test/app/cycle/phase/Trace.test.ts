import { describe, expect, it } from "vitest";
import { Trace } from "../../../../app/cycle/phase/Trace.ts";

function traceOf(n: number, rateHz?: number): Trace {
  const trace = new Trace();
  trace.rateHz = rateHz;
  for (let i = 0; i < n; i += 1) trace.append(i, Number.NaN);
  return trace;
}

describe("a trace", () => {
  it("keeps places and times when its head is forgotten", () => {
    const trace = traceOf(3000, 100);
    trace.dropHead(1200);
    expect([trace.length, trace.values[0], trace.placeOf(0), trace.timeOf(0)]).toEqual([1800, 1200, 1200, 12]);
  });

  it("keeps places and times on both sides of a fold, and through a second one", () => {
    const trace = traceOf(3000, 100);
    trace.fold(1000, 2000);
    trace.fold(1000, 1500);
    expect([trace.length, trace.placeOf(999), trace.placeOf(1000), trace.values[1000]]).toEqual([
      1500, 999, 2500, 2500,
    ]);
    expect(trace.indexAfter(990, 0.05)).toBe(995);
    expect(trace.indexAfter(990, 15.2)).toBe(1010);
    trace.dropHead(1100);
    expect([trace.placeOf(0), trace.skipped]).toEqual([2600, 0]);
  });

  it("has one gap only", () => {
    const trace = traceOf(3000);
    trace.fold(1000, 1100);
    expect(() => trace.fold(1500, 1600)).toThrow(RangeError);
  });

  it("gives lines before the first stamp its time", () => {
    const trace = traceOf(2);
    trace.append(7, 4);
    expect([0, 1, 2].map((i) => trace.timeOf(i))).toEqual([4, 4, 4]);
  });

  it("knows no time without rate and stamps", () => {
    const trace = traceOf(5);
    expect([trace.timeOf(3), trace.timed]).toEqual([undefined, false]);
  });
});
