import { describe, expect, it } from "vitest";
import type { Contribution } from "../../../app/correction/Budget.ts";
import { spreadBelow } from "../../../app/correction/spreadBelow.ts";
import { spreadOf } from "../../../app/correction/spreadOf.ts";
import { normalCdf } from "../../../app/numerics/normalCdf.ts";
import { studentCdf } from "../../../app/numerics/studentCdf.ts";
import { studentQuantile } from "../../../app/numerics/studentQuantile.ts";

const line = (
  standardN: number,
  distribution: Contribution["distribution"],
  degreesOfFreedom = Infinity,
): Contribution => ({
  source: "drift",
  type: "B",
  distribution,
  standardN,
  degreesOfFreedom,
  assumed: false,
});
const below = (x: number, ...lines: Contribution[]) => spreadBelow(spreadOf(lines), x);
const points = [-6, -2.5, -1, -0.3, 0, 0.7, 1.5, 4];

describe("spreadBelow", () => {
  it("is the normal distribution for bells alone", () => {
    for (const x of points) expect(below(x, line(0.6, "normal"), line(0.8, "normal"))).toBeCloseTo(normalCdf(x), 14);
  });

  it.each([1, 2, 3, 4, 9, 40, 1000])("is Student's t for a t alone with %d degrees of freedom", (degrees) => {
    for (const x of points)
      expect(Math.abs(below(x, line(1, "t", degrees)) - studentCdf(x, degrees))).toBeLessThan(2e-6);
  });

  it("is a straight ramp for one rectangle alone, and a triangle's for two of one width", () => {
    const half = Math.sqrt(3);
    expect(below(0.5 * half, line(1, "rectangular"))).toBeCloseTo(0.75, 12);
    expect([below(-2, line(1, "rectangular")), below(2, line(1, "rectangular"))]).toEqual([0, 1]);
    // two of half-width a: below x from the end at -2a it is x²/8a²
    expect(below(-half, line(1, "rectangular"), line(1, "rectangular"))).toBeCloseTo(1 / 8, 12);
    expect(below(half, line(1, "rectangular"), line(1, "rectangular"))).toBeCloseTo(7 / 8, 12);
  });

  // sum of three uniform variables (Irwin-Hall): (x + 3a)³/48a³ from the lower end on
  it("meets the sum of three equal rectangles within 0.002", () => {
    const a = Math.sqrt(3);
    const three = [1, 1, 1].map(() => line(1, "rectangular"));
    for (const x of [-2.5 * a, -2 * a, -1.2 * a, -a]) {
      expect(Math.abs(below(x, ...three) - (x + 3 * a) ** 3 / (48 * a ** 3))).toBeLessThan(0.002);
    }
  });

  it("is even about the middle", () => {
    const mixed = [
      line(1, "t", 2),
      line(0.7, "rectangular"),
      line(0.4, "triangular"),
      line(0.3, "normal"),
      line(0.5, "t", 12),
    ];
    for (const x of points) expect(below(x, ...mixed) + below(-x, ...mixed)).toBeCloseTo(1, 9);
    expect(below(0, ...mixed)).toBeCloseTo(0.5, 9);
  });

  it("does not change abruptly when a rectangle becomes too narrow to matter", () => {
    for (const x of points) {
      const wide = below(x, line(1, "normal"), line(0.2295, "rectangular"));
      expect(wide).toBeCloseTo(below(x, line(1, "normal"), line(0.2293, "rectangular")), 4);
    }
  });

  it("folds a t and a rectangle as a fine sum over the rectangle does", () => {
    const a = 1.3 * Math.sqrt(3);
    for (const x of points) {
      let sum = 0;
      for (let i = 0; i < 2000; i += 1) sum += studentCdf((x - a + (2 * a * (i + 0.5)) / 2000) / 0.8, 2);
      expect(Math.abs(below(x, line(0.8, "t", 2), line(1.3, "rectangular")) - sum / 2000)).toBeLessThan(1e-5);
    }
  });

  it.each([
    [3, 0.7, 8, 0.7],
    [1, 0.1, 12, 1],
    [7, 0.6, 6, 0.8],
  ])("folds a t of %d degrees (u = %d) and one of %d (u = %d) as a fine sum over the second does", (nu, u, nu2, u2) => {
    const slices = 4000;
    const second = Array.from({ length: slices }, (_, i) => u2 * studentQuantile((i + 0.5) / slices, nu2));
    for (const x of points) {
      const sum = second.reduce((s, e) => s + studentCdf((x - e) / u, nu), 0) / slices;
      expect(Math.abs(below(x, line(u, "t", nu), line(u2, "t", nu2)) - sum)).toBeLessThan(5e-4);
    }
  });
});
