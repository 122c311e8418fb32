import { describe, expect, it } from "vitest";
import { correlationTime } from "../../../app/numerics/correlationTime.ts";
import { effectiveSampleSize } from "../../../app/numerics/effectiveSampleSize.ts";
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

describe("effectiveSampleSize", () => {
  it.each([0, 0.3, 0.5, 0.7])("comes to n (1 - r) / (1 + r) for first-order noise with r = %d, within 6 %%", (r) => {
    const n = 4000;
    const share = averageOver(20, (seed) => effectiveSampleSize(noise(n, r, seed)) / n);
    expect(Math.abs(share / ((1 - r) / (1 + r)) - 1)).toBeLessThan(0.06);
  });

  it("counts NIST's drifting filter readings (r = 0.94) as few, and beam deflections that swing as no more than they are", () => {
    const mavro = strdUnivariate.find((d) => d.name === "Mavro")!.data;
    const lew = strdUnivariate.find((d) => d.name === "Lew")!.data;
    expect(effectiveSampleSize(mavro)).toBeLessThan(5);
    expect(effectiveSampleSize(lew)).toBe(lew.length);
  });

  it("is the count itself for readings that are all equal", () => {
    expect(effectiveSampleSize([3, 3, 3, 3])).toBe(4);
  });

  it("refuses an empty list", () => {
    expect(() => effectiveSampleSize([])).toThrow(RangeError);
  });
});

describe("correlationTime", () => {
  it("meets the sum of (2 / pi) asin r^k for medians", () => {
    const r = 0.7;
    let expected = 1;
    for (let k = 1; k < 80; k += 1) expected += (4 / Math.PI) * Math.asin(r ** k);
    const found = averageOver(20, (seed) => correlationTime([noise(4000, r, seed)]).ofMedian);
    expect(Math.abs(found / expected - 1)).toBeLessThan(0.06);
  });

  it("is 1 where nothing can be told", () => {
    expect(correlationTime([])).toEqual({ ofMean: 1, ofMedian: 1 });
    expect(correlationTime([Float64Array.of(1, -1)])).toEqual({ ofMean: 1, ofMedian: 1 });
    expect(correlationTime([new Float64Array(10)])).toEqual({ ofMean: 1, ofMedian: 1 });
  });
});
