import { describe, expect, it } from "vitest";
import { expectationOf } from "../../../../app/round/match/expectationOf.ts";

describe("what the next check is expected to show", () => {
  it("is the level of the last checks", () => {
    expect(expectationOf([20_000, 20_000, 20_000])!.forceN).toBeCloseTo(20_000, 9);
  });

  it("scatters as the checks do, a slow fall taken out, and never less than 0.4 %", () => {
    const wild = expectationOf([20_000, 21_000, 19_000, 21_000, 19_500, 20_800])!;
    const steady = expectationOf([20_000, 19_990, 19_980, 19_970, 19_960, 19_950, 19_940, 19_930])!;
    expect(wild.scatter).toBeGreaterThan(0.04);
    expect(steady.scatter).toBeLessThan(0.01);
    expect(steady.scatter).toBeGreaterThanOrEqual(0.004);
    expect(steady.spread).toBeGreaterThan(steady.scatter);
  });

  it("does not move when the unit does", () => {
    const a = expectationOf([20_000, 20_400, 19_900])!;
    const b = expectationOf([20, 20.4, 19.9])!;
    expect(b.scatter).toBeCloseTo(a.scatter, 12);
    expect(b.forceN * 1000).toBeCloseTo(a.forceN, 6);
  });

  it("is the builder's figure before the first check, and nothing without one", () => {
    expect(expectationOf([], 24_000)).toMatchObject({ forceN: 24_000 });
    expect(expectationOf([])).toBeUndefined();
  });
});
