import { describe, expect, it } from "vitest";
import { correlationTime } from "../../../app/numerics/correlationTime.ts";
import { mean } from "../../../app/numerics/mean.ts";
import { Random } from "../../../simulator/physics/Random.ts";
import { strdUnivariate } from "./strdUnivariate.ts";

/** First-order noise: each reading keeps the share `r` of the one before. */
function noise(n: number, r: number, seed: number): Float64Array {
  const random = new Random(seed);
  let x = random.normal();
  return Float64Array.from({ length: n }, () => {
    const now = x;
    x = r * x + Math.sqrt(1 - r * r) * random.normal();
    return now;
  });
}

const averageOver = (runs: number, f: (seed: number) => number) =>
  Array.from({ length: runs }, (_, i) => f(i + 1)).reduce((a, b) => a + b) / runs;

/** Readings about their mean. */
const residuals = (values: readonly number[]) => Float64Array.from(values, (v) => v - mean(values));

describe("correlationTime", () => {
  it.each([0, 0.3, 0.5, 0.7])("comes to (1 + r) / (1 - r) for first-order noise with r = %d, within 6 %%", (r) => {
    const found = averageOver(20, (seed) => correlationTime([noise(4000, r, seed)]).ofMean);
    expect(Math.abs(found / ((1 + r) / (1 - r)) - 1)).toBeLessThan(0.06);
  });

  it("is long for NIST's drifting filter readings (r = 0.94), and 1 for beam deflections that swing", () => {
    const of = (name: string) => correlationTime([residuals(strdUnivariate.find((d) => d.name === name)!.data)]);
    expect(of("Mavro").ofMean).toBeGreaterThan(10);
    expect(of("Lew").ofMean).toBe(1);
  });

  it("finds the memory of stretches that are short one by one", () => {
    const stretches = Array.from({ length: 60 }, (_, i) => noise(30, 0.6, i + 1));
    expect(Math.abs(correlationTime(stretches).lag1 - 0.6)).toBeLessThan(0.06);
  });

  it("meets the sum of (2 / pi) asin r^k for medians", () => {
    const r = 0.7;
    let expected = 1;
    for (let k = 1; k < 80; k += 1) expected += (4 / Math.PI) * Math.asin(r ** k);
    const found = averageOver(20, (seed) => correlationTime([noise(4000, r, seed)]).ofMedian);
    expect(Math.abs(found / expected - 1)).toBeLessThan(0.06);
  });

  it("is 1 where nothing can be told", () => {
    expect(correlationTime([])).toEqual({ lag1: 0, ofMean: 1, ofMedian: 1 });
    expect(correlationTime([Float64Array.of(1, -1)])).toEqual({ lag1: 0, ofMean: 1, ofMedian: 1 });
    expect(correlationTime([new Float64Array(10)])).toEqual({ lag1: 0, ofMean: 1, ofMedian: 1 });
  });
});
