import { describe, expect, it } from "vitest";
import { stepUncertainty } from "../../../../app/proof/uncertainty/StepUncertainty.ts";
import { uncertaintyCurve } from "../../../../app/proof/uncertainty/uncertaintyCurve.ts";
import gum from "../../../published/gum-annex-examples.json" with { type: "json" };
import { proofCoverage, proofWorlds } from "../../../support/proofCoverage.ts";

// Truth: the simulated gauge's own curve. 400 proofs each; the bench counts 2,000. Three standard deviations of the count: 3.3 %.
describe("the stated 95 % interval", () => {
  it.each(proofWorlds)("of curve and working check holds the truth: %j", (world) => {
    for (const method of ["polynomial", "working"] as const) {
      const { covered } = proofCoverage(method, world, 400, 3);
      expect(covered).toBeGreaterThan(0.92);
      expect(covered).toBeLessThan(0.985);
    }
  });

  it.each(proofWorlds)("of ISO 376 and E74 is no narrower: %j", (world) => {
    for (const method of ["iso376", "astm-e74"] as const)
      expect(proofCoverage(method, world, 400, 3).covered).toBeGreaterThan(0.95);
  });
});

describe("stepUncertainty", () => {
  // JCGM 100:2008, H.1 (end gauge): the same budget gives 31.7 nm with 16.75 effective degrees of freedom.
  it("combines the GUM's example H.1", () => {
    const h1 = gum.cases.find((c) => c.name === "H.1 end gauge")!;
    const components = Object.values(h1.inputs!.components!) as { u: number; nu: number }[];
    const got = stepUncertainty(
      1,
      components.map(({ u, nu }) => ({ source: "reference", standard: u, degreesOfFreedom: nu })),
    );
    const { u_c, nu_effective } = h1.expected!.recomputed as { u_c: number; nu_effective: number };
    expect(got.standard / u_c).toBeCloseTo(1, 8);
    expect(got.degreesOfFreedom / nu_effective).toBeCloseTo(1, 8);
    // 95 %: t for 16.75 degrees of freedom is 2.112; the lines of 2 and 5 degrees pull the factor up.
    expect(got.coverageFactor).toBeGreaterThan(2.112);
    expect(got.coverageFactor).toBeLessThan(2.6);
  });

  it("is Student's factor for a single line, and never under the method's least", () => {
    const line = (degreesOfFreedom: number) => [{ source: "curve", standard: 3, degreesOfFreedom } as const];
    expect(stepUncertainty(1, line(2)).coverageFactor).toBeCloseTo(4.303, 3); // JCGM 100, table G.2
    expect(stepUncertainty(1, line(Infinity)).coverageFactor).toBeCloseTo(1.96, 3);
    expect(stepUncertainty(1, line(Infinity), 2).expanded).toBe(6);
  });

  it("is zero where nothing is known to scatter", () => {
    expect(stepUncertainty(1, [])).toMatchObject({ standard: 0, expanded: 0, degreesOfFreedom: Infinity });
  });
});

describe("uncertaintyCurve", () => {
  it("finds both parts again, and lies below no step", () => {
    const forces = [1, 2, 5, 10];
    const exact = uncertaintyCurve(
      forces,
      forces.map((f) => Math.hypot(0.3, 0.02 * f)),
    );
    expect([exact.constant, exact.proportional]).toEqual([expect.closeTo(0.3, 12), expect.closeTo(0.02, 12)]);
    const bumpy = [0.3, 0.5, 0.3, 0.4];
    const over = uncertaintyCurve(forces, bumpy);
    for (const [i, f] of forces.entries())
      expect(Math.hypot(over.constant, over.proportional * f)).toBeGreaterThanOrEqual(bumpy[i]! * (1 - 1e-12));
  });

  it.each([
    ["no steps", [], [], { constant: 0, proportional: 0 }],
    ["one step", [5], [0.2], { constant: 0.2, proportional: 0 }],
    ["uncertainties that fall with the force", [1, 2], [0.4, 0.2], { proportional: 0 }],
    ["a curve through zero", [1, 2], [0.1, 0.25], { constant: 0 }],
  ])("knows %s", (_, forces, expanded, want) => {
    expect(uncertaintyCurve(forces, expanded)).toMatchObject(want);
  });
});
