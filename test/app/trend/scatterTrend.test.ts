import { describe, expect, it } from "vitest";
import { scatterTrend } from "../../../app/trend/scatterTrend.ts";
import { spindleHistory } from "../../support/spindleHistory.ts";

const of = (scatter: readonly (number | undefined)[], seriesCount = 4) =>
  scatterTrend(
    spindleHistory(
      scatter.map(() => 20_000),
      { check: (i) => ({ seriesSN: scatter[i], seriesCount }) },
    ).points,
  );

describe("scatterTrend", () => {
  it("tells rising, falling and no trend", () => {
    expect(of([80, 90, 95, 110, 120, 140, 150])).toMatchObject({
      direction: "rises",
      ratio: expect.closeTo(145 / 85, 12),
    });
    expect(of([150, 140, 120, 110, 95, 90, 80])?.direction).toBe("falls");
    expect(of([100, 90, 105, 95, 102, 98, 101])?.direction).toBe("none");
  });

  it("cannot tell from four checks, and says nothing with fewer than two known", () => {
    expect(of([80, 90, 100, 110])?.direction).toBe("cannotTell");
    expect(of([80, undefined, undefined])).toBeUndefined();
  });

  // B4 of samples of four is 2.266 (ASTM MNL 7, table of factors).
  it("sets the last check apart beyond 2.266 times the median of those before, for four clampings", () => {
    expect(of([100, 100, 100, 100, 100, 226])!.lastAboveLimit).toBe(false);
    expect(of([100, 100, 100, 100, 100, 227])!.lastAboveLimit).toBe(true);
    expect(of([100, 100, 100, 100, 100, 227], 1)!.lastAboveLimit).toBe(false);
  });
});
