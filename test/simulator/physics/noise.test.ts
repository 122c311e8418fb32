import { describe, expect, it } from "vitest";
import { Noise } from "../../../simulator/physics/Noise.ts";
import { Random } from "../../../simulator/physics/Random.ts";

const N = 200_000;
const sd = (v: readonly number[]) => Math.sqrt(v.reduce((s, x) => s + x * x, 0) / v.length);
const autocorrelation = (v: readonly number[], lag: number) =>
  v.slice(lag).reduce((s, x, i) => s + x * v[i]!, 0) / v.reduce((s, x) => s + x * x, 0);

describe("Random", () => {
  it("repeats itself for the same seed and differs for another", () => {
    const draw = (seed: number) => {
      const random = new Random(seed);
      return Array.from({ length: 50 }, () => random.uniform());
    };
    expect(draw(5)).toEqual(draw(5));
    expect(draw(5)).not.toEqual(draw(6));
  });

  it("spreads evenly: mean and variance of the uniform law within five standard errors", () => {
    const random = new Random(1);
    const v = Array.from({ length: N }, () => random.uniform() - 0.5);
    expect(Math.abs(v.reduce((s, x) => s + x, 0) / N)).toBeLessThan(5 * Math.sqrt(1 / 12 / N));
    expect(Math.abs(sd(v) ** 2 - 1 / 12)).toBeLessThan(5 * Math.sqrt(1 / 180 / N));
    expect(Math.abs(autocorrelation(v, 1))).toBeLessThan(5 / Math.sqrt(N));
  });

  it("draws normal deviates: moments of the normal law within five standard errors", () => {
    const random = new Random(2);
    const v = Array.from({ length: N }, () => random.normal());
    expect(Math.abs(v.reduce((s, x) => s + x, 0) / N)).toBeLessThan(5 / Math.sqrt(N));
    expect(Math.abs(sd(v) - 1)).toBeLessThan(5 / Math.sqrt(2 * N));
    const beyond2 = v.filter((x) => Math.abs(x) > 1.959964).length / N; // two-sided 5 % point
    expect(Math.abs(beyond2 - 0.05)).toBeLessThan(5 * Math.sqrt((0.05 * 0.95) / N));
  });

  it("gives branches that do not disturb each other", () => {
    const one = new Random(3);
    const a = one.branch();
    const two = new Random(3);
    const b = two.branch();
    two.branch().uniform();
    expect(a.uniform()).toBe(b.uniform());
  });
});

describe("Noise", () => {
  const run = (whiteN: number, wanderN: number) => {
    const noise = new Noise({ whiteN, wanderN, memoryS: 0.1 }, 0.01, new Random(4));
    return Array.from({ length: N }, () => noise.next());
  };

  it("has the standard deviations it was given, added as variances", () => {
    // Neighbours are alike over some ten readings, so fewer than N count.
    expect(Math.abs(sd(run(3, 4)) / 5 - 1)).toBeLessThan(0.02);
  });

  it("forgets as a first-order process does: exp(-lag/memory)", () => {
    const v = run(0, 4);
    for (const lag of [1, 5, 10, 20])
      expect(Math.abs(autocorrelation(v, lag) - Math.exp(-lag / 10))).toBeLessThan(0.03);
    expect(Math.abs(autocorrelation(run(3, 0), 1))).toBeLessThan(5 / Math.sqrt(N));
  });
});
