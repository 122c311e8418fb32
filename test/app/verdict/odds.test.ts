import { describe, expect, it } from "vitest";
import { chiSquareCdf } from "../../../app/numerics/chiSquareCdf.ts";
import { normalCdf } from "../../../app/numerics/normalCdf.ts";
import { normalQuantile } from "../../../app/numerics/normalQuantile.ts";
import { studentCdf } from "../../../app/numerics/studentCdf.ts";
import type { JudgeInput } from "../../../app/verdict/Judgement.ts";
import { type Odds, oddsAt, oddsBetween } from "../../../app/verdict/odds.ts";
import jcgm from "../../published/jcgm106-conformity.json" with { type: "json" };

const caseNamed = (start: string) => jcgm.cases.find(({ name }) => name.startsWith(start))!;
type Measured = Pick<JudgeInput, "standardUncertaintyN" | "degreesOfFreedom"> & { readonly valueN: number };
const measured = (valueN: number, standardUncertaintyN: number, degreesOfFreedom?: number): Measured => ({
  valueN,
  standardUncertaintyN,
  degreesOfFreedom,
});

/** As `judge` puts them together. */
function probabilityConforming(of: Measured, minimumN?: number, maximumN?: number): Odds | undefined {
  const atMinimum = minimumN === undefined ? undefined : oddsAt(of, of.valueN - minimumN);
  const atMaximum = maximumN === undefined ? undefined : oddsAt(of, maximumN - of.valueN);
  return atMinimum && atMaximum ? oddsBetween(atMinimum, atMaximum) : (atMinimum ?? atMaximum);
}

describe("odds of conforming", () => {
  // JCGM 106:2012 7.3 and 7.4, examples; the printed figures are from memory, confirmed by their own inputs
  it.each([
    ["upper limit", 0.005],
    ["lower limit", 0.0005],
    ["two-sided", 0.005],
  ])("meets the JCGM 106 example with %s", (name, halfDigit) => {
    const { inputs, expected } = caseNamed(name);
    const { y, u, lower_limit, upper_limit } = inputs as {
      y: number;
      u: number;
      lower_limit?: number;
      upper_limit?: number;
    };
    const p = probabilityConforming(measured(y, u), lower_limit, upper_limit)!.conforming;
    const recomputed = (expected as { recomputed: { p_conform: number } }).recomputed.p_conform;
    const printed = (expected as { published_from_memory: { p_conform: number } }).published_from_memory.p_conform;
    expect(Math.abs(p / recomputed - 1)).toBeLessThan(1e-9);
    expect(Math.abs(p - printed)).toBeLessThan(halfDigit);
  });

  // JCGM 106:2012 8.3.3, guarded rejection (from memory): the speed that proves 100 km/h exceeded with 99.9 %
  it("finds the JCGM 106 speed that proves the limit exceeded", () => {
    const { inputs, expected } = caseNamed("guarded rejection");
    const { limit, relative_u, required_probability } = inputs as {
      limit: number;
      relative_u: number;
      required_probability: number;
    };
    const z = normalQuantile(required_probability);
    const speed = limit / (1 - z * relative_u);
    expect(probabilityConforming(measured(speed, relative_u * speed), undefined, limit)!.not).toBeCloseTo(
      required_probability,
      12,
    );
    const { recomputed, published_from_memory } = expected as {
      recomputed: { acceptance_limit: number };
      published_from_memory: { acceptance_limit: number };
    };
    expect(Math.abs(speed / recomputed.acceptance_limit - 1)).toBeLessThan(1e-9);
    expect(Math.ceil(speed)).toBe(published_from_memory.acceptance_limit);
  });

  // JCGM 106:2012 table 1 (from memory)
  it.each(Object.entries(caseNamed("z for").expected.published_from_memory!))(
    "meets table 1 of JCGM 106: p = %s at z = %d",
    (p, z) => {
      expect(Math.abs(normalQuantile(Number(p)) - z)).toBeLessThan(0.0051); // 1.645 is printed as 1.64
      expect(
        Math.abs(probabilityConforming(measured(normalQuantile(Number(p)), 1), 0)!.conforming - Number(p)),
      ).toBeLessThan(1e-14);
    },
  );

  // JCGM 106:2012 9.5.4, ball bearings (found in a worked example): a gamma prior of shape and rate 4, limit 2, u = 0.25
  it("carries the JCGM 106 ball bearings: risk of consumer and producer by integration over the prior", () => {
    const { recomputed, published } = caseNamed("ball bearings").expected as unknown as {
      recomputed: Record<string, number>;
      published: Record<string, number>;
    };
    const beyond = chiSquareCdf(2 * 4 * 2, 2 * 4, "above"); // a gamma variable of rate 4 is chi-square of 8 degrees over 8
    expect(beyond).toBeCloseTo(recomputed.p_nonconforming_before_inspection!, 12);
    expect(Math.abs(beyond - published.p_nonconforming_before_inspection!)).toBeLessThan(5e-5);
    const prior = (eta: number) => (4 ** 4 / 6) * eta ** 3 * Math.exp(-4 * eta);
    // The true value eta is read with u: accepted when the reading lies below the acceptance limit.
    const accepted = (eta: number, limit: number) => probabilityConforming(measured(eta, 0.25), undefined, limit)!;
    const consumer = (limit: number) => simpson((eta) => prior(eta) * accepted(eta, limit).conforming, 2, 12);
    const producer = (limit: number) => simpson((eta) => prior(eta) * accepted(eta, limit).not, 0, 2);
    expect(Math.abs(consumer(2) / recomputed.consumer_risk_at_acceptance_2! - 1)).toBeLessThan(1e-6);
    expect(Math.abs(consumer(2) - published.consumer_risk_at_acceptance_2!)).toBeLessThan(0.0005);
    expect(Math.abs(producer(2) / recomputed.producer_risk_at_acceptance_2! - 1)).toBeLessThan(1e-6);
    expect(
      Math.abs(consumer(recomputed.acceptance_limit_for_0_001!) / published.consumer_risk_target! - 1),
    ).toBeLessThan(1e-6);
    expect(Math.abs(recomputed.acceptance_limit_for_0_001! - published.acceptance_limit!)).toBeLessThan(0.005);
  });

  it("takes Student's t where the repeats are few", () => {
    expect(probabilityConforming(measured(10, 2, 3), 7)!.conforming).toBe(1 - studentCdf(-1.5, 3));
    expect(probabilityConforming(measured(10, 2), 7)!.conforming).toBe(1 - normalCdf(-1.5));
  });

  it("keeps the digits of a small chance far outside the limits", () => {
    const odds = probabilityConforming(measured(0, 1), 10, 11)!;
    expect(odds.conforming / (normalCdf(-10) - normalCdf(-11))).toBeCloseTo(1, 12);
    expect(odds.not).toBe(1);
    const mirrored = probabilityConforming(measured(0, 1), -11, -10)!;
    expect(mirrored.conforming).toBe(odds.conforming);
  });

  it("adds up to one", () => {
    for (const value of [-3, 0, 0.4, 1, 5]) {
      const { conforming, not } = probabilityConforming(measured(value, 0.7), 0, 1)!;
      expect(conforming + not).toBeCloseTo(1, 14);
    }
  });
});

/** Composite Simpson's rule with 4000 panels: exact here to ten digits. */
function simpson(f: (x: number) => number, a: number, b: number): number {
  const n = 4000;
  const h = (b - a) / n;
  let sum = f(a) + f(b);
  for (let i = 1; i < n; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(a + i * h);
  return (sum * h) / 3;
}
