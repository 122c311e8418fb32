import { describe, expect, it } from "vitest";
import { normalCdf } from "../../../app/numerics/normalCdf.ts";
import { normalQuantile } from "../../../app/numerics/normalQuantile.ts";
import { published, worstError } from "./publishedProbability.ts";

describe("normalQuantile", () => {
  it("meets 50-digit values from 1e-300 to 1 - 1e-12, to 1e-12", () => {
    expect(worstError(published.normalQuantile, normalQuantile).error).toBeLessThan(1e-12);
  });

  it("is undone by normalCdf", () => {
    for (const p of [1e-250, 1e-20, 0.001, 0.2, 0.499]) expect(normalCdf(normalQuantile(p)) / p).toBeCloseTo(1, 11);
  });

  it("is 0 at one half", () => {
    expect(normalQuantile(0.5)).toBe(0);
  });

  it.each([0, 1, -0.1, 1.1, NaN])("refuses %d", (p) => {
    expect(() => normalQuantile(p)).toThrow(RangeError);
  });
});
