import { describe, expect, it } from "vitest";
import { runsTest } from "../../../app/numerics/runsTest.ts";
import published from "../../published/nist-runs-autocorrelation.json" with { type: "json" };
import { strdUnivariate } from "./strdUnivariate.ts";

describe("runsTest", () => {
  // NIST/SEMATECH e-Handbook 1.3.5.13, Lew data: Z = 2.6938 (from memory, confirmed by recomputation).
  it("meets the Lew data of the e-Handbook", () => {
    const got = runsTest(strdUnivariate.find((d) => d.name === "Lew")!.data)!;
    const { recomputed, published_from_memory: printed } = published.expected;
    expect(got.runs).toBe(recomputed.runs);
    expect([got.above, got.below]).toEqual([recomputed.above, recomputed.below]);
    expect(got.expectedRuns).toBe(recomputed.expected_runs);
    expect(Math.abs(got.sdRuns - recomputed.sd_runs)).toBeLessThan(1e-12);
    expect(Math.abs(got.z - recomputed.Z)).toBeLessThan(1e-12);
    expect(Math.abs(got.z - printed.Z)).toBeLessThan(5e-5);
  });

  it("drops values equal to the median", () => {
    expect(runsTest([1, 5, 5, 9, 5])).toMatchObject({ above: 1, below: 1, runs: 2 });
  });

  it("has nothing to say where one side is missing", () => {
    expect(runsTest([4, 4, 4])).toBeUndefined();
  });

  it("refuses no value", () => {
    expect(() => runsTest([])).toThrow(RangeError);
  });
});
