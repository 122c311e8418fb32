import { describe, expect, it } from "vitest";
import { deadWeightForce, type Weight } from "../../../../app/proof/reference/deadWeightForce.ts";
import published from "../../../published/air-density-buoyancy.json" with { type: "json" };

const weight: Weight = { massKg: 100, massKind: "true", massStandardKg: 0, densityKgM3: 7850, densityStandardKgM3: 0 };
const site = { gravity: { value: 9.81277, standard: 0 }, airDensityKgM3: 1.15, airDensityStandardKgM3: 0 };

describe("deadWeightForce", () => {
  // Formulas of NISTIR 6969 SOP 2 and OIML D 28, recomputed independently.
  it.each(published.force_cases)("meets $mass_kg kg at $g m/s2 in air of $air kg/m3", (c) => {
    const at = { ...site, gravity: { value: c.g, standard: 0 }, airDensityKgM3: c.air };
    const of = (massKind: Weight["massKind"]) =>
      deadWeightForce([{ ...weight, massKg: c.mass_kg, densityKgM3: c.density, massKind }], at).forceN;
    expect(of("true") / c.force_from_true_mass_N).toBeCloseTo(1, 12);
    expect(of("conventional") / c.force_from_conventional_mass_N).toBeCloseTo(1, 12);
  });

  it("adds up a stack", () => {
    const both = deadWeightForce([weight, { ...weight, massKg: 50 }], site).forceN;
    expect(both).toBeCloseTo(1.5 * deadWeightForce([weight], site).forceN, 10);
  });

  it("carries each input's uncertainty in its own line", () => {
    const uncertain = { ...weight, massStandardKg: 0.001, densityStandardKgM3: 50 };
    const at = {
      gravity: { value: 9.81277, standard: 9.81277 * 5e-5 },
      airDensityKgM3: 1.15,
      airDensityStandardKgM3: 0.01,
    };
    const got = deadWeightForce([uncertain], at);
    const part = (source: string) => got.contributions.find((c) => c.source === source)!.standardN / got.forceN;
    expect(part("mass")).toBeCloseTo(1e-5, 9);
    expect(part("gravity")).toBeCloseTo(5e-5, 9);
    expect(part("air")).toBeCloseTo(0.01 / 7850, 8); // dF/F = d(rho)/rho_m
    expect(part("density")).toBeCloseTo((1.15 / 7850 ** 2) * 50, 8);
    expect(got.standardN / got.forceN).toBeCloseTo(Math.hypot(1e-5, 5e-5, 0.01 / 7850, (1.15 / 7850 ** 2) * 50), 8);
  });

  it("lets a conventional mass feel its density only by the air's distance from 1.2 kg/m3", () => {
    const conventional = { ...weight, massKind: "conventional", densityStandardKgM3: 100 } as const;
    expect(deadWeightForce([conventional], { ...site, airDensityKgM3: 1.2 }).standardN).toBeLessThan(1e-6);
  });

  it.each([
    ["no weight", [], site, /at least one/],
    ["mass 0", [{ ...weight, massKg: 0 }], site, /above 0 kg, got 0/],
    ["a density in g/cm3", [{ ...weight, densityKgM3: 7.85 }], site, /density.*7.85/],
    ["a negative uncertainty", [{ ...weight, massStandardKg: -1 }], site, /uncertainty/],
    ["gravity of the moon", [weight], { ...site, gravity: { value: 1.62, standard: 0 } }, /gravity.*1.62/],
    ["air in g/m3", [weight], { ...site, airDensityKgM3: 1200 }, /air density/],
  ])("refuses %s", (_, weights, at, words) => {
    expect(() => deadWeightForce(weights, at)).toThrow(words);
  });
});
