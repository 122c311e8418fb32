import { describe, expect, it } from "vitest";
import { scanSteps } from "../../../../app/trend/step/scanSteps.ts";
import { scanTwoSteps } from "../../../../app/trend/step/scanTwoSteps.ts";
import { sizeStep } from "../../../../app/trend/step/sizeStep.ts";

const x = Float64Array.from({ length: 12 }, (_, i) => i);

describe("sizeStep", () => {
  // Student's interval for the difference of two means (JCGM 100 table G.2: t = 2.228 for 10 degrees of freedom).
  it("is the difference of the means with Student's interval", () => {
    const y = Float64Array.of(9, 11, 9, 11, 9, 11, 19, 21, 19, 21, 19, 21);
    const { size, low, high } = sizeStep(x, y, 6);
    expect(size).toBeCloseTo(10, 12);
    const half = 2.228 * Math.sqrt((12 / 10) * (1 / 6 + 1 / 6));
    expect(Math.abs(high! - low! - 2 * half)).toBeLessThan(0.001);
  });

  it("takes a slope out", () => {
    const y = x.map((v) => 3 * v + (v >= 6 ? 10 : 0) + (v % 2 === 0 ? 0.1 : -0.1));
    expect(Math.abs(sizeStep(x, y, 6).size - 10)).toBeLessThan(0.2);
  });

  it("has no interval with one value on each side", () => {
    expect(sizeStep(x.subarray(0, 2), Float64Array.of(1, 4), 1)).toEqual({ size: 3, low: undefined, high: undefined });
  });
});

describe("scanSteps", () => {
  it("leaves what fitting each place one by one leaves", () => {
    const y = Float64Array.of(4, 7, 1, 8, 2, 8, 1, 8, 2, 8, 4, 5);
    const scan = scanSteps(x, y, 3);
    const rests = (sloped: boolean) => [3, 4, 5, 6, 7, 8, 9].map((at) => restBeside(x, y, at, sloped));
    expect(scan.step.rest).toBeCloseTo(Math.min(...rests(false)), 10);
    expect(scan.stepOnLine.rest).toBeCloseTo(Math.min(...rests(true)), 10);
    expect(scan.places).toBe(7);
  });
});

describe("scanTwoSteps", () => {
  it("leaves what trying every pair of places leaves", () => {
    const y = Float64Array.of(4, 7, 1, 8, 2, 8, 1, 8, 2, 8, 4, 5);
    const squares = (side: Float64Array) => {
      const mean = side.reduce((sum, v) => sum + v, 0) / side.length;
      return side.reduce((sum, v) => sum + (v - mean) ** 2, 0);
    };
    const rests: number[] = [];
    for (let a = 3; a <= 6; a += 1) {
      for (let b = a + 3; b <= 9; b += 1) {
        rests.push(squares(y.subarray(0, a)) + squares(y.subarray(a, b)) + squares(y.subarray(b)));
      }
    }
    const got = scanTwoSteps(y, 3)!;
    expect(got.rest).toBeCloseTo(Math.min(...rests), 10);
    expect(got.withoutFirst).toBeCloseTo(squares(y.subarray(0, got.second)) + squares(y.subarray(got.second)), 10);
    expect(got.withoutSecond).toBeCloseTo(squares(y.subarray(0, got.first)) + squares(y.subarray(got.first)), 10);
  });

  it("is not tried on too few values or far too many", () => {
    expect(scanTwoSteps(new Float64Array(8), 3)).toBeUndefined();
    expect(scanTwoSteps(new Float64Array(401), 3)).toBeUndefined();
  });
});

/** Sum of squares left when each side has its own mean, and both share a slope. */
function restBeside(xs: Float64Array, ys: Float64Array, at: number, sloped: boolean): number {
  const centred = (values: Float64Array) =>
    [values.subarray(0, at), values.subarray(at)].flatMap((side) => {
      const mean = side.reduce((sum, v) => sum + v, 0) / side.length;
      return [...side].map((v) => v - mean);
    });
  const [dx, dy] = [centred(xs), centred(ys)];
  const dot = (a: number[], b: number[]) => a.reduce((sum, v, i) => sum + v * b[i]!, 0);
  return dot(dy, dy) - (sloped ? dot(dx, dy) ** 2 / dot(dx, dx) : 0);
}
