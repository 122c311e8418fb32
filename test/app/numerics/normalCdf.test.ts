import { describe, expect, it } from "vitest";
import { normalCdf } from "../../../app/numerics/normalCdf.ts";
import { published, worstError } from "./publishedProbability.ts";

describe("normalCdf", () => {
  it("meets 50-digit values from -38 to 8 standard deviations to 1e-12", () => {
    const normal = published.normalCdf.filter(([, p]) => p! > 2.3e-308); // below it a double itself has fewer digits
    expect(normal.length).toBeGreaterThan(100);
    expect(worstError(normal, normalCdf).error).toBeLessThan(1e-12);
  });

  // Handbook of Mathematical Functions, table 26.1 (from memory)
  it.each(published.published.normalCdf)("meets the printed P(%d) = %d", (z, p) => {
    expect(Math.abs(normalCdf(z!) - p!)).toBeLessThan(5.1e-16);
  });

  // Handbook of Mathematical Functions, table 26.2 (from memory)
  it.each(published.published.minusLog10UpperTail)("meets the printed -log10 Q(%d) = %d", (z, digits) => {
    expect(Math.abs(-Math.log10(normalCdf(-z!)) - digits!)).toBeLessThan(5.001e-6);
  });

  it("adds up to one with its mirror image", () => {
    for (const z of [0, 0.1, 0.5, 1, 3, 8, 20]) expect(normalCdf(z) + normalCdf(-z)).toBe(1);
  });

  it("ends at 0 and 1", () => {
    expect([normalCdf(-Infinity), normalCdf(Infinity), normalCdf(-50)]).toEqual([0, 1, 0]);
  });

  it("refuses what is not a number", () => {
    expect(() => normalCdf(NaN)).toThrow(RangeError);
  });
});
