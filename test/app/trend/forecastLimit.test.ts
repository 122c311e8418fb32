import { describe, expect, it } from "vitest";
import { studentQuantile } from "../../../app/numerics/studentQuantile.ts";
import { bandPoints } from "../../../app/trend/bandPoints.ts";
import { chanceBelow } from "../../../app/trend/chanceBelow.ts";
import { fitStretch } from "../../../app/trend/fitStretch.ts";
import { forecastLimit } from "../../../app/trend/forecastLimit.ts";
import { leastSquaresLine } from "../../../app/trend/leastSquaresLine.ts";
import { reachInterval } from "../../../app/trend/reachInterval.ts";
import { seededNormal } from "../../support/seededNormal.ts";
import { rippled } from "../../support/spindleHistory.ts";

const x = (n: number) => Float64Array.from({ length: n }, (_, i) => 90 * i);
const fitOf = (values: readonly number[]) => fitStretch(x(values.length), Float64Array.from(values));
const tenYears = (n: number) => ({ horizon: 90 * (n - 1) + 3652.5 });

const falling = rippled(12, 100, (i) => 20_000 - 120 * i);

describe("forecastLimit", () => {
  it("reads the date off the robust line and the interval off Fieller's inversion", () => {
    const fit = fitOf(falling);
    const got = forecastLimit(fit, 17_000, tenYears(12));
    expect(got).toMatchObject({ state: "crosses", confidence: 0.9, limit: 17_000, beyondThreeSpans: false });
    expect(fit.line!.intercept + fit.line!.slope * got.at!).toBeCloseTo(17_000, 6);
    const yardstick = leastSquaresLine(x(12), falling)!;
    const want = reachInterval(yardstick, 17_000, { t: studentQuantile(0.95, 10) })!;
    expect(got.low).toBeCloseTo(Math.min(want.low, got.at!), 9);
    expect(got.high).toBeCloseTo(Math.max(want.high, got.at!), 9);
  });

  // Coverage against a known truth, the one check an interval needs; the bench holds the full table.
  it("covers the true date in about nine of ten runs", () => {
    const normal = seededNormal(61);
    let covered = 0;
    const runs = 400;
    for (let run = 0; run < runs; run += 1) {
      const values = Array.from({ length: 12 }, (_, i) => 20_000 - 120 * i + 100 * normal());
      const { low, high } = forecastLimit(fitOf(values), 17_000, tenYears(12));
      if ((low ?? 0) <= 25 * 90 && 25 * 90 <= (high ?? Number.POSITIVE_INFINITY)) covered += 1;
    }
    expect(covered / runs).toBeGreaterThan(0.85);
    expect(covered / runs).toBeLessThan(0.95);
  });

  it("widens by the uncertainty that all checks share", () => {
    const plain = forecastLimit(fitOf(falling), 17_000, tenYears(12));
    const wide = forecastLimit(fitOf(falling), 17_000, { ...tenYears(12), shared: 150 });
    expect(wide.at).toBe(plain.at);
    expect(wide.high! - wide.low!).toBeGreaterThan(plain.high! - plain.low!);
  });

  it("says so beyond three spans", () => {
    expect(forecastLimit(fitOf(falling), 14_000, { horizon: 1e5 })).toMatchObject({
      state: "crosses",
      beyondThreeSpans: true,
    });
  });

  it("says not within ten years of a line that gets there later, rises, or hardly falls", () => {
    expect(forecastLimit(fitOf(falling), 10_000, tenYears(12)).state).toBe("notWithinTenYears");
    const rising = rippled(12, 100, (i) => 20_000 + 120 * i);
    expect(forecastLimit(fitOf(rising), 17_000, tenYears(12))).toMatchObject({
      state: "notWithinTenYears",
      at: undefined,
    });
    const steady = rippled(25, 30, () => 20_000);
    expect(forecastLimit(fitOf(steady), 15_000, tenYears(25)).state).toBe("notWithinTenYears");
    expect(forecastLimit(fitOf([5, 5, 5, 5, 5]), 4, tenYears(5)).state).toBe("notWithinTenYears");
  });

  it("cannot tell when the slope may be chance and might get there in time", () => {
    const loose = [20_000, 19_500, 20_300, 19_600, 20_100];
    const got = forecastLimit(fitOf(loose), 18_500, tenYears(5));
    expect(got).toMatchObject({ state: "cannotTell", at: undefined, high: undefined });
    expect(got.low).toBeGreaterThanOrEqual(360);
  });

  it("says already there of a line under the limit, and of a last check far under it", () => {
    expect(forecastLimit(fitOf(falling), 19_500, tenYears(12))).toMatchObject({ state: "already" });
    expect(forecastLimit(fitOf([...falling, 15_000]), 16_000, tenYears(13)).state).toBe("already");
  });

  it("does not call one low check just under the limit already there", () => {
    const values = [...falling.slice(0, -1), 18_540];
    expect(forecastLimit(fitOf(values), 18_560, tenYears(12)).state).toBe("crosses");
  });

  it.each([
    ["one check", [20_000]],
    ["two", [20_000, 19_000]],
    ["three", [20_000, 19_000, 18_000]],
  ])("cannot tell from %s, unless it is there", (_, values) => {
    expect(forecastLimit(fitOf(values), 15_000, tenYears(3)).state).toBe("cannotTell");
    expect(forecastLimit(fitOf(values), 21_000, tenYears(3)).state).toBe("already");
  });

  it("cannot tell from checks of one date", () => {
    const fit = fitStretch(new Float64Array(6), Float64Array.of(5, 6, 5, 6, 5, 6));
    expect(forecastLimit(fit, 3, { horizon: 3652.5 }).state).toBe("cannotTell");
  });
});

describe("bandPoints", () => {
  it("crosses the limit where the forecast says", () => {
    const fit = fitOf(falling);
    const { low, high } = forecastLimit(fit, 18_000, tenYears(12));
    for (const [end, edge] of [
      [low!, "low"],
      [high!, "high"],
    ] as const) {
      const last = bandPoints(fit, { confidence: 0.9, shared: 0, upTo: end }).at(-1)!;
      expect(last.x).toBeCloseTo(end, 9);
      expect(Math.abs(last[edge]! - 18_000)).toBeLessThan(1);
    }
  });

  it("holds the line, goes no farther than three spans, and has no edges for two checks", () => {
    const points = bandPoints(fitOf(falling), { confidence: 0.9, shared: 0, upTo: 1e6 });
    expect(points.at(-1)!.x).toBe(4 * 990);
    expect(points.every((p) => p.low! <= p.mid && p.mid <= p.high!)).toBe(true);
    const two = bandPoints(fitOf([5, 4]), { confidence: 0.9, shared: 0, upTo: undefined });
    expect(two.flatMap((p) => [p.low, p.high])).toEqual(two.flatMap(() => [undefined, undefined]));
    expect(bandPoints(fitOf([5]), { confidence: 0.9, shared: 0, upTo: undefined })).toEqual([]);
  });
});

describe("chanceBelow", () => {
  it("is one half where the line reaches the limit, and grows from there on", () => {
    const fit = fitOf(falling);
    const { at } = forecastLimit(fit, 17_000, tenYears(12));
    expect(chanceBelow(fit, 17_000, at!)).toBeCloseTo(0.5, 9);
    expect(chanceBelow(fit, 17_000, at! - 200)!).toBeLessThan(0.5);
    expect(chanceBelow(fit, 17_000, at! + 200)!).toBeGreaterThan(0.5);
  });

  // Against the truth: the next check falls below the value of chance 10 % in about one of ten runs.
  it("foretells how often the next check falls below a value", () => {
    const normal = seededNormal(62);
    let below = 0;
    const runs = 600;
    for (let run = 0; run < runs; run += 1) {
      const values = Array.from({ length: 10 }, (_, i) => 20_000 - 100 * i + 150 * normal());
      const next = 19_000 + 150 * normal();
      if (chanceBelow(fitOf(values), next, 900)! < 0.1) below += 1;
    }
    expect(Math.abs(below / runs - 0.1)).toBeLessThan(0.04);
  });

  it("cannot be told from three checks", () => {
    expect(chanceBelow(fitOf([5, 4, 3]), 2, 300)).toBeUndefined();
  });
});
