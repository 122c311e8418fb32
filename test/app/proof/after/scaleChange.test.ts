import { describe, expect, it } from "vitest";
import { scaleChange } from "../../../../app/proof/after/scaleChange.ts";

describe("scaleChange", () => {
  // By hand: 1.012/1.004 - 1 = 0.00797; 1.96 x sqrt(0.001^2 + 0.002^2) x 1.00797 = 0.00442.
  it("is off where the two lie further apart than both uncertainties explain", () => {
    const { relative, expanded, off } = scaleChange(
      { scale: 1.004, relative: 0.001 },
      { scale: 1.012, relative: 0.002 },
    );
    expect(relative).toBeCloseTo(0.007_968, 6);
    expect(expanded).toBeCloseTo(0.004_418, 5);
    expect(off).toBe(true);
    expect(scaleChange({ scale: 1.004, relative: 0.003 }, { scale: 1.012, relative: 0.003 }).off).toBe(false);
  });

  // The normalized error of two results: (x - X) / sqrt(U_x^2 + U_X^2), off beyond 1 (ISO/IEC 17043, from memory).
  it.each([
    [1, 1.0041, 0.001, 0.001],
    [1.01, 1.0079, 0.0005, 0.001],
    [0.998, 1.001, 0.001, 0.0011],
  ])("agrees with the normalized error of %s and %s", (before, now, uBefore, uNow) => {
    const en = (now - before) / (1.96 * Math.hypot(uBefore * before, uNow * now));
    expect(scaleChange({ scale: before, relative: uBefore }, { scale: now, relative: uNow }).off).toBe(
      Math.abs(en) > 1,
    );
  });

  it("falls where the scale falls, and is nothing where it stands", () => {
    expect(scaleChange({ scale: 1.01, relative: 0.001 }, { scale: 1, relative: 0.001 }).relative).toBeLessThan(0);
    expect(scaleChange({ scale: 1.01, relative: 0.001 }, { scale: 1.01, relative: 0.001 })).toMatchObject({
      relative: 0,
      off: false,
    });
  });
});
