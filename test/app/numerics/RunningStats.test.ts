import { describe, expect, it } from "vitest";
import { RunningStats } from "../../../app/numerics/RunningStats.ts";
import { strdUnivariate } from "./strdUnivariate.ts";

const of = (values: readonly number[]) => {
  const stats = new RunningStats();
  for (const v of values) stats.add(v);
  return stats;
};

describe("RunningStats", () => {
  it.each(strdUnivariate)(
    "meets the certified mean and standard deviation of NIST $name",
    ({ data, mean, sd, inexact }) => {
      const stats = of(data);
      expect(Math.abs(stats.mean / mean - 1)).toBeLessThan(1e-13);
      expect(Math.abs(stats.stdDev! / sd - 1)).toBeLessThan(inexact ? 1e-6 : 1e-9);
    },
  );

  it("knows count, least and greatest", () => {
    const stats = of([3, -1, 2]);
    expect([stats.n, stats.least, stats.greatest]).toEqual([3, -1, 3]);
  });

  it("has no standard deviation below two values", () => {
    expect(of([]).stdDev).toBeUndefined();
    expect(of([5]).stdDev).toBeUndefined();
  });

  it("refuses what is not finite", () => {
    expect(() => of([Number.NaN])).toThrow(RangeError);
  });
});
