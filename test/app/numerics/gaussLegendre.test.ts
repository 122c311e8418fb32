import { describe, expect, it } from "vitest";
import { gaussLegendre } from "../../../app/numerics/gaussLegendre.ts";

const integral = (n: number, f: (x: number) => number, from: number, to: number) => {
  const { nodes, weights } = gaussLegendre(n, from, to);
  return nodes.reduce((sum, x, i) => sum + weights[i]! * f(x), 0);
};

describe("gaussLegendre", () => {
  // Abramowitz and Stegun, table 25.4, n = 5 (from memory).
  it("has the printed nodes and weights of five", () => {
    const { nodes, weights } = gaussLegendre(5, -1, 1);
    expect(nodes[0]).toBeCloseTo(0.906179845938664, 14);
    expect(nodes[1]).toBeCloseTo(0.538469310105683, 14);
    expect(nodes[2]).toBeCloseTo(0, 14);
    expect(weights[0]).toBeCloseTo(0.236926885056189, 14);
    expect(weights[2]).toBeCloseTo(0.568888888888889, 14);
  });

  it.each([1, 2, 7, 40])("is exact for polynomials up to degree 2n - 1, n = %i", (n) => {
    const degree = 2 * n - 1;
    const got = integral(n, (x) => (degree + 1) * x ** degree, 0, 1);
    expect(Math.abs(got - 1)).toBeLessThan(1e-13);
  });

  it("integrates the exponential to rounding", () => {
    expect(Math.abs(integral(20, Math.exp, -1, 2) - (Math.exp(2) - Math.exp(-1)))).toBeLessThan(1e-13);
  });

  it("refuses no node", () => {
    expect(() => gaussLegendre(0, 0, 1)).toThrow(RangeError);
  });
});
