import { describe, expect, it } from "vitest";
import { e74DegreeFactor } from "../../../../app/proof/e74/e74Degree.ts";
import { type E74Proof, e74Proof } from "../../../../app/proof/e74/e74Proof.ts";
import { isRefused, type ProofOptions } from "../../../../app/proof/method/ProofOptions.ts";
import { astmE74Table } from "../../../../app/proof/tables/astmE74Table.ts";
import published from "../../../published/astm-e74-lower-limit.json" with { type: "json" };
import pontius from "../../../published/nist-strd-pontius.json" with { type: "json" };
import { plainReadings } from "../../../support/plainReadings.ts";

const { x, y } = pontius.inputs;
const readings = Object.freeze(plainReadings(x, y));
function proof(rows = readings, options: ProofOptions = {}): E74Proof {
  const got = e74Proof(rows, options);
  if (isRefused(got)) throw new Error(got.refused);
  return got;
}

describe("e74DegreeFactor", () => {
  // ASTM E74-18 annex A1, factors from memory; the closed formula reproduces them.
  it.each(Object.entries(published.degree_factors.by_n1))("meets the factors for %s forces", (forces, row) => {
    for (const [i, degree] of published.degree_factors.columns.entries()) {
      expect(Math.abs(e74DegreeFactor(Number(forces), degree, 0.975) - row[i]!)).toBeLessThanOrEqual(5e-4);
    }
  });

  it("has no factor for a degree the forces do not carry", () => {
    expect(() => e74DegreeFactor(6, 5, 0.975)).toThrow(RangeError);
  });
});

// Constructed on the data of NIST StRD Pontius, a load cell of 3 million pounds-force; rules partly from memory.
describe("e74Proof", () => {
  const { expected } = published.worked_example;

  it("meets the lower limit factor and the class limits of the worked example", () => {
    const got = proof();
    const relative = (value: number, want: number) => expect(Math.abs(value / want - 1)).toBeLessThan(1e-7);
    relative(got.forcePerIndication, expected.mean_force_per_deflection);
    relative(got.lowerLimitFactor, expected.LLF);
    relative(got.lowerLimits.A, expected.class_A_lower_limit);
    relative(got.lowerLimits.AA, expected.class_AA_lower_limit);
    expect(got.steps).toHaveLength(expected.averaged_data_n1);
  });

  it("selects the degree as the example does, by every ratio and factor", () => {
    const got = proof();
    expect(got.fit.degree).toBe(expected.selected_degree);
    for (const trial of got.trials) {
      const key = String(trial.degree) as "1" | "2";
      expect(Math.abs(trial.residualSd / expected.residual_sd_by_degree[key] - 1)).toBeLessThan(1e-7);
      if (trial.degree === 1) continue;
      expect(Math.abs(trial.ratio! / expected.ratio_by_degree[key as "2"] - 1)).toBeLessThan(1e-7);
      expect(Math.abs(trial.factor! / expected.factor_by_degree[key as "2"] - 1)).toBeLessThan(1e-7);
    }
  });

  it("gives class AA from its lower limit, class A from the first load that was applied", () => {
    const got = proof();
    expect(got.class).toBe("AA");
    expect(got.ranges).toEqual([
      { class: "AA", from: got.lowerLimits.AA, to: 3e6 },
      { class: "A", from: got.lowerLimits.A, to: 3e6 },
    ]);
    const fine = proof(
      readings.map((r) => ({ ...r, indication: r.reference / 1e6 + 1e-9 * Math.sin(r.reference) })),
      { degree: 1 },
    );
    expect(fine.ranges[1]!.from).toBe(150_000);
  });

  it("never states a lower limit factor under the resolution", () => {
    const got = proof(readings, { resolution: 0.002 });
    expect(got.lowerLimitFactor).toBeCloseTo(0.002 * got.forcePerIndication, 9);
    expect(got.class).toBe("A");
  });

  it("ships the published factor and multiples, marked as from memory", () => {
    expect(astmE74Table).toMatchObject({ factor: 2.4, multipleAA: 2000, multipleA: 400, fromMemory: true });
    expect(proof().remarks.map((r) => r.code)).toContain("tableFromMemory");
  });

  it.each([
    ["one run only", readings.slice(0, 20), ["needsReadings", "needsRuns"]],
    ["six forces", readings.filter((r) => r.reference <= 900_000), ["needsReadings", "needsForces"]],
  ])("gives no class for %s, and the factor all the same", (_, rows, codes) => {
    const got = proof(rows, { degree: 1 });
    expect(got.class).toBeUndefined();
    expect(got.ranges).toEqual([]);
    expect(got.missing.map((m) => m.code)).toEqual(codes);
    expect(got.lowerLimitFactor).toBeGreaterThan(0);
  });

  it("gives no class to readings that scatter too much", () => {
    const rough = readings.map((r, i) => ({ ...r, indication: r.indication + 0.02 * (i % 2) }));
    expect(proof(rough)).toMatchObject({ class: undefined, missing: [{ code: "outsideClasses" }] });
  });

  it.each([
    [
      { degree: 5 },
      readings.filter((r) => r.reference <= 600_000),
      /degree 5 needs at least 6 different loads, the readings have 4/,
    ],
    [{}, readings.slice(0, 1), /degree 1/],
    [{ degree: 0 }, readings, /from 1 to 12, got 0/],
  ])("refuses %j when the readings do not carry it", (options, rows, words) => {
    const got = e74Proof(rows, options);
    expect(isRefused(got) && got.refused).toMatch(words);
  });
});
