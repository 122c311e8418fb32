import { describe, expect, it } from "vitest";
import { applyZeros } from "../../../app/cycle/applyZeros.ts";
import type { Cycle, Rest } from "../../../app/cycle/Cycle.ts";
import { clamping, feed, level, ramp } from "./feed.ts";

const rest = (indicationN: number, atIndex: number, more: Partial<Rest> = {}): Rest => ({
  indicationN,
  standardN: 0.5,
  atIndex,
  atS: atIndex / 100,
  restedS: 2,
  reset: false,
  ...more,
});

/** A cycle of 10,000 N gross of a zero of 0, between two rests. */
function cycle(before: Rest | undefined, after: Rest | undefined, at: number, more: Partial<Cycle> = {}): Cycle {
  return {
    startIndex: at,
    endIndex: at + 400,
    startS: at / 100,
    endS: at / 100 + 4,
    peakN: 10_500,
    peakIndex: at + 2,
    settledN: 10_000,
    settledUncertaintyN: 1,
    settledWindow: { fromIndex: at + 100, toIndex: at + 300, n: 200, effectiveN: 200 },
    settledFromS: undefined,
    settledToS: undefined,
    overshoot: 0.05,
    riseTimeS: undefined,
    noiseN: 5,
    slopeNPerS: 0,
    creep: 0.001,
    zeroBeforeN: before?.indicationN,
    zeroAfterN: after?.indicationN,
    zeroN: 0,
    flags: [],
    holdUncertaintyN: 1,
    restBefore: before,
    restAfter: after,
    ...more,
  };
}

describe("the zeros of a series", () => {
  it("are the first one for all cycles, and half its change goes into the budget", () => {
    const cycles = [cycle(rest(20, 0), rest(30, 500), 100), cycle(rest(30, 550), rest(26, 1100), 600)];
    const zeroed = applyZeros(cycles);
    expect(zeroed.mode).toBe("first");
    expect(zeroed.cycles.map((c) => c.zeroN)).toEqual([20, 20]);
    expect(zeroed.cycles.map((c) => c.settledN)).toEqual([9_980, 9_980]);
    expect(zeroed.halfChangeN).toBe(5); // of the rest farthest from the first, not of the last
  });

  it("count the greatest change between, not only that of the last rest: a zero that went and came back was not steady", () => {
    const cycles = [cycle(rest(0, 0), rest(60, 500), 100), cycle(rest(60, 550), rest(0, 1100), 600)];
    const zeroed = applyZeros(cycles);
    expect(zeroed.mode).toBe("first");
    expect(zeroed.halfChangeN).toBe(30);
  });

  it("count the change after the last zero that was believed", () => {
    const cycles = [cycle(rest(0, 0), rest(8, 500), 100), cycle(rest(10, 4000, { restedS: 35 }), rest(70, 5000), 4100)];
    const zeroed = applyZeros(cycles);
    expect(zeroed.mode).toBe("interpolated");
    expect(zeroed.cycles[1]!.zeroN).toBe(10);
    expect(zeroed.halfChangeN).toBe(30);
  });

  it("are made surer by later rests that agree with the first within their scatter", () => {
    const cycles = [cycle(rest(20, 0), rest(20.4, 500), 100), cycle(rest(20.4, 550), rest(19.9, 1100), 600)];
    const [first] = applyZeros(cycles).cycles;
    expect(first!.zeroN).toBeCloseTo(20.1, 6);
    expect(first!.settledUncertaintyN).toBeCloseTo(Math.hypot(1, 0.5 / Math.sqrt(3)), 9);
  });

  it("are interpolated in time when the rests drift steadily", () => {
    const cycles = [0, 1, 2].map((i) =>
      cycle(rest(10 + 30 * i, 1000 * i), rest(40 + 30 * i, 1000 * (i + 1)), 1000 * i + 300),
    );
    const zeroed = applyZeros(cycles);
    expect(zeroed.mode).toBe("interpolated");
    for (const [i, c] of zeroed.cycles.entries()) expect(c.zeroN).toBeCloseTo(10 + 30 * i + 15, 6);
    expect(zeroed.halfChangeN).toBe(0);
  });

  it("are interpolated towards one taken after 30 s of rest", () => {
    const cycles = [cycle(rest(0, 0), rest(8, 500), 100), cycle(rest(40, 4000, { restedS: 35 }), undefined, 4100)];
    const zeroed = applyZeros(cycles);
    expect(zeroed.cycles[0]!.zeroN).toBeCloseTo(40 * (300 / 4000), 6);
    expect(zeroed.cycles[1]!.zeroN).toBe(40);
  });

  it("come, next to a strained rest, from between the nearest true ones", () => {
    const strained = rest(900, 500);
    const cycles = [
      cycle(rest(0, 0), strained, 100, { zeroAfterN: undefined, flags: ["notReleased"] }),
      cycle(strained, rest(12, 1000), 600, { zeroBeforeN: undefined }),
    ];
    const zeroed = applyZeros(cycles);
    expect(zeroed.cycles[0]!.zeroN).toBeCloseTo(12 * 0.3, 6);
    expect(zeroed.cycles[1]!.zeroN).toBeCloseTo(12 * 0.8, 6);
  });

  it("begin anew where the zero was set anew between two cycles", () => {
    const cycles = [
      cycle(rest(2000, 0), rest(2000, 500), 100),
      cycle(rest(0, 900, { reset: true }), rest(0, 1500), 1000),
    ];
    expect(applyZeros(cycles).cycles.map((c) => c.zeroN)).toEqual([2000, 0]);
  });

  it("take the rest in progress for the last one, when it is known", () => {
    const cycles = [0, 1].map((i) => cycle(rest(30 * i, 1000 * i), rest(30 * i + 5, 1000 * i + 800), 1000 * i + 300));
    expect(applyZeros(cycles, rest(60, 2000)).mode).toBe("interpolated");
  });

  it("change neither when they are applied again nor what does not depend on them", () => {
    const cycles = [cycle(rest(20, 0), rest(30, 500), 100)];
    const once = applyZeros(cycles).cycles;
    expect(applyZeros(once).cycles).toEqual(once);
    expect(once[0]!.noiseN).toBe(5);
    expect(once[0]!.overshoot).toBeCloseTo(500 / 9_980, 12);
  });

  it("leave cycles without any rest, and an empty series, as they are", () => {
    const lone = cycle(undefined, undefined, 100);
    expect(applyZeros([lone]).cycles).toEqual([lone]);
    expect(applyZeros([]).cycles).toEqual([]);
  });
});

describe("a drifting gauge, from readings to forces", () => {
  it("gives the same force to each clamping although its zero moves by 0.4 % of it", () => {
    const lines = Array.from({ length: 4 }, () => clamping(15_000))
      .flat()
      .map((v, i) => v + 0.02 * i);
    const { cycles, closing } = feed(lines);
    for (const c of applyZeros(cycles, closing).cycles) expect(Math.abs(c.settledN! - 15_000)).toBeLessThan(4);
  });

  it("follows a gauge that was set to zero between two clampings", () => {
    const lines = [...clamping(15_000, 4, 2_000), ...level(2_000, 100), ...level(0, 300), ...clamping(14_000)];
    const { cycles, closing } = feed(lines);
    expect(applyZeros(cycles, closing).cycles.map((c) => Math.round(c.settledN! / 10) * 10)).toEqual([15_000, 14_000]);
  });

  it("does not take a strained rest for a zero", () => {
    const lines = [
      ...clamping(15_000).slice(0, 603),
      ...ramp(15_000, 900, 4),
      ...level(900, 300),
      ...ramp(900, 14_900, 3),
      ...level(14_900, 400),
      ...ramp(14_900, 0, 4),
      ...level(0, 300),
    ];
    const { cycles, closing } = feed(lines);
    const zeroed = applyZeros(cycles, closing).cycles;
    expect(zeroed.map((c) => Math.round(c.settledN! / 10) * 10)).toEqual([15_000, 14_900]);
  });
});
