import { describe, expect, it } from "vitest";
import { isSteady, progressOf } from "../../../../app/gauge/learn/progress.ts";

const places = (n: number) => Array.from({ length: n }, (_, i) => i);
const column = (n: number, value: (i: number) => number) => Array.from({ length: n }, (_, i) => value(i));
const progress = (values: readonly number[], orders: readonly number[] = places(values.length)) =>
  progressOf(values, orders);

describe("progressOf", () => {
  it("calls steps of one a counter, also when it wraps or every second line is an echo", () => {
    expect(progress(column(50, (i) => i))).toEqual({ kind: "counter", step: 1, coarse: false });
    expect(progress(column(50, (i) => (i + 970) % 1000))?.kind).toBe("counter");
    expect(
      progress(
        column(50, (i) => i),
        column(50, (i) => 2 * i),
      )?.kind,
    ).toBe("counter");
  });

  it("calls other nearly equal steps a clock, with their mean", () => {
    expect(progress(column(50, (i) => 20 * i))).toEqual({ kind: "clock", step: 20, coarse: false });
    const sixty = progress(column(301, (i) => Math.round((i * 1000) / 60)));
    expect(sixty?.kind).toBe("clock");
    expect(sixty!.step).toBeCloseTo(1000 / 60, 2);
  });

  it("knows a clock that stands over several lines", () => {
    expect(progress(column(200, (i) => Math.floor(i / 20)))).toEqual({ kind: "clock", step: 0.05, coarse: true });
  });

  it("does not look over gaps in the order of lines", () => {
    const orders = [...places(20), ...places(20).map((i) => i + 1000)];
    expect(progress([...column(20, (i) => i), ...column(20, (i) => i + 500)], orders)?.kind).toBe("counter");
  });

  it("sees neither in forces, flags, constants and columns too short to tell", () => {
    expect(progress(column(60, (i) => (i < 30 ? 0 : i < 34 ? i - 29 : 5)))).toBeUndefined();
    expect(progress(column(60, (i) => Math.floor(i / 10) % 2))).toBeUndefined();
    expect(progress(column(60, () => 7))).toBeUndefined();
    expect(progress([1, 2])).toBeUndefined();
    expect(progress(column(60, (i) => (i * 7919) % 97))).toBeUndefined();
  });

  it("is not put off by one damaged value in ten", () => {
    expect(progress(column(100, (i) => (i % 10 === 3 ? 7777 : 20 * i)))?.kind).toBe("clock");
    expect(isSteady(column(100, (i) => (i % 12 === 3 ? 7777 : i)))).toBe(true);
  });
});
