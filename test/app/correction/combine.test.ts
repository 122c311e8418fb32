import { describe, expect, it } from "vitest";
import type { Contribution } from "../../../app/correction/Budget.ts";
import { combine } from "../../../app/correction/combine.ts";
import euramet from "../../published/force-calibration-uncertainty.json" with { type: "json" };
import gum from "../../published/gum-annex-examples.json" with { type: "json" };

const line = (standardN: number, degreesOfFreedom = Infinity, over: Partial<Contribution> = {}): Contribution => ({
  source: "gaugeProof",
  type: "B",
  distribution: degreesOfFreedom === Infinity ? "normal" : "t",
  standardN,
  degreesOfFreedom,
  assumed: false,
  ...over,
});

describe("combine", () => {
  // JCGM 100:2008 (GUM) annex H.1, end gauge; k99 and U99 from memory
  const endGauge = gum.cases.find((c) => c.name.startsWith("H.1"))!;
  const components = Object.values(endGauge.inputs!.components!).map(({ u, nu }) => line(u, nu));
  const { recomputed, published } = endGauge.expected as unknown as {
    recomputed: Record<string, number>;
    published: Record<string, number>;
  };

  it("meets the GUM's end gauge, recomputed to 1e-8", () => {
    const budget = combine(components, 0.99);
    expect(Math.abs(budget.standardN / recomputed.u_c! - 1)).toBeLessThan(1e-8);
    expect(Math.abs(budget.degreesOfFreedom / recomputed.nu_effective! - 1)).toBeLessThan(1e-8);
    expect(Math.abs(budget.coverageFactor / recomputed.k_99! - 1)).toBeLessThan(1e-8);
  });

  it("meets the GUM's end gauge as printed: u 32, k 2.92, U 93 from the printed u", () => {
    const budget = combine(components, 0.99);
    expect(Math.abs(budget.standardN - published.u_c!)).toBeLessThan(0.5);
    expect(Math.abs(budget.coverageFactor - published.k_99!)).toBeLessThan(0.005);
    expect(Math.abs(budget.coverageFactor * published.u_c! - published.U_99!)).toBeLessThan(0.5);
  });

  it("meets the GUM's end gauge with its second-order terms, printed 34", () => {
    const second = (endGauge.expected!.published as { second_order_terms_nm: number[] }).second_order_terms_nm.map(
      (u) => line(u),
    );
    const budget = combine([...components, ...second]);
    expect(Math.abs(budget.standardN - published.u_c_with_second_order!)).toBeLessThan(0.5);
    expect(Math.abs(budget.standardN / recomputed.u_c_with_second_order! - 1)).toBeLessThan(1e-3); // the terms are printed in tenths
  });

  // EURAMET cg-4 v2.0, ISO 376:2011 annex C: formulas from memory, worked figures computed in the set of published values
  const example = euramet.worked_example.expected_percent;
  it.each([0, 1, 2, 3, 4])("meets the force calibration example at step %d to 1e-8", (i) => {
    const parts = [
      example.w1,
      example.w2[i]!,
      example.w3[i]!,
      example.w4[i]!,
      example.w5,
      example.w6,
      example.w7,
      example.w8[i]!,
    ];
    const twoSigma = 0.954499736103642;
    const up = combine(
      parts.map((w) => line(w)),
      twoSigma,
    );
    expect(Math.abs(up.standardN / example.w_c[i]! - 1)).toBeLessThan(1e-8);
    expect(Math.abs(up.expandedN / example.W_k2[i]! - 1)).toBeLessThan(1e-8);
    const both = combine(
      [...parts, example.w_reversibility[i]!].map((w) => line(w)),
      twoSigma,
    );
    expect(Math.abs(both.expandedN / example.W_k2_with_reversibility[i]! - 1)).toBeLessThan(1e-8);
  });

  it("names the source with the greatest variance, all its lines together", () => {
    const zero = [1, 2].map(() => line(3, Infinity, { source: "zero" }));
    expect(combine([...zero, line(4)]).dominant).toBe("zero");
    expect(combine([...zero, line(5)]).dominant).toBe("gaugeProof");
  });

  it("does not depend on the unit, nor on the order", () => {
    const [one, other] = [
      combine(components),
      combine(components.toReversed().map((c) => ({ ...c, standardN: c.standardN / 4.4482216152605 }))),
    ];
    expect(other.expandedN * 4.4482216152605).toBeCloseTo(one.expandedN, 9);
  });

  it("refuses a budget of nothing", () => {
    expect(() => combine([])).toThrow(RangeError);
    expect(() => combine([line(0)])).toThrow(RangeError);
  });
});
