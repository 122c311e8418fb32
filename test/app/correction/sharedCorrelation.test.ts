import { describe, expect, it } from "vitest";
import type { Contribution } from "../../../app/correction/Budget.ts";
import { sharedCorrelation, type UncertainForce } from "../../../app/correction/sharedCorrelation.ts";

const line = (source: Contribution["source"], standardN: number): Contribution => ({
  source,
  type: "B",
  distribution: "normal",
  standardN,
  degreesOfFreedom: Infinity,
  assumed: false,
});
const force = (over: Partial<UncertainForce> = {}): UncertainForce => ({
  contributions: [
    line("repeatability", 30),
    line("gaugeProof", 40),
    line("adapter", 50),
    line("zero", 10),
    line("drift", 20),
  ],
  curve: "g1 1",
  adapter: "a1 1",
  ...over,
});

describe("sharedCorrelation", () => {
  // JCGM 100:2008 (GUM) F.1.2.3: covariance of two results that share an input
  it("shares the scale error of curve and adapter, and nothing else", () => {
    const variance = 30 ** 2 + 40 ** 2 + 50 ** 2 + 10 ** 2 + 20 ** 2;
    expect(sharedCorrelation(force(), force())).toBeCloseTo((40 ** 2 + 50 ** 2) / variance, 14);
    expect(sharedCorrelation(force(), force({ curve: "g1 2" }))).toBeCloseTo(50 ** 2 / variance, 14);
    expect(sharedCorrelation(force(), force({ adapter: "a2 1" }))).toBeCloseTo(40 ** 2 / variance, 14);
    expect(sharedCorrelation(force(), force({ curve: undefined, adapter: undefined }))).toBe(0);
  });

  it("does not take two gauges without a curve for the same", () => {
    expect(
      sharedCorrelation(
        force({ curve: undefined, adapter: undefined }),
        force({ curve: undefined, adapter: undefined }),
      ),
    ).toBe(0);
  });

  it("is 1 where a common scale is all there is", () => {
    const only = { contributions: [line("gaugeProof", 40)], curve: "g 1", adapter: undefined };
    expect(sharedCorrelation(only, { ...only, contributions: [line("gaugeProof", 35)] })).toBeCloseTo(1, 14);
  });

  it("is 0 without any uncertainty", () => {
    expect(sharedCorrelation(force({ contributions: [] }), force())).toBe(0);
  });
});
