import { describe, expect, it } from "vitest";
import type { ProofReading } from "../../../../app/proof/data/ProofReading.ts";
import { type Iso376Proof, iso376Proof } from "../../../../app/proof/iso376/iso376Proof.ts";
import { isRefused, type ProofOptions } from "../../../../app/proof/method/ProofOptions.ts";
import { iso376Table } from "../../../../app/proof/tables/iso376Table.ts";
import budget from "../../../published/force-calibration-uncertainty.json" with { type: "json" };
import published from "../../../published/iso376-classes.json" with { type: "json" };
import { iso376Example } from "../../../support/iso376Example.ts";

const readings = Object.freeze(iso376Example());
function proof(rows: readonly ProofReading[] = readings, options: ProofOptions = {}): Iso376Proof {
  const got = iso376Proof(rows, options);
  if (isRefused(got)) throw new Error(got.refused);
  return got;
}
const near = (got: readonly (number | undefined)[], want: readonly number[], within: number) => {
  expect(got).toHaveLength(want.length);
  for (const [i, w] of want.entries()) expect(Math.abs(got[i]! - w)).toBeLessThan(within);
};
const codes = (p: Iso376Proof) => p.missing.map((m) => m.code);

// Formulas and limits of ISO 376:2011 from memory, the readings constructed: a check that the formulas are coded as written.
describe("iso376Proof", () => {
  const { expected } = published.worked_example;

  it("meets every relative error of the worked example", () => {
    const got = proof();
    near(
      got.steps.map((s) => s.mean),
      expected.Xr,
      5e-12,
    );
    near(
      got.steps.map((s) => s.b),
      expected.b,
      1e-8,
    );
    near(
      got.steps.map((s) => s.bPrime),
      expected.b_prime,
      1e-8,
    );
    near(
      got.steps.map((s) => s.fc),
      expected.fc,
      1e-8,
    );
    near(
      got.steps.map((s) => s.v),
      expected.v,
      1e-8,
    );
    near([got.f0, got.c], [expected.f0, expected.c], 1e-12);
    near(
      got.fit.coefficients.slice(1).map((c, i) => c / expected.fit_coefficients[i]!),
      [1, 1, 1],
      1e-9,
    );
  });

  it("classes each step and the whole as the example does", () => {
    const got = proof();
    expect(got.steps.map((s) => s.class)).toEqual(expected.class_by_step);
    expect(got.class).toBe("0.5");
    expect(got.ranges).toEqual([
      { class: "0.5", from: 4, to: 20 },
      { class: "1", from: 4, to: 20 },
      { class: "2", from: 4, to: 20 },
    ]);
    expect(got.missing).toEqual([]);
  });

  it("ships the limits of the published table, marked as from memory", () => {
    expect(iso376Table.fromMemory).toBe(true);
    for (const [i, row] of published.limits_percent.entries()) {
      const { cls, b, b_prime, fc, f0, v, c, U_calibration_force } = row;
      expect(iso376Table.classes[i]).toMatchObject({
        class: cls,
        b,
        bPrime: b_prime,
        fc,
        f0,
        v,
        c,
        referenceExpanded: U_calibration_force,
      });
    }
    expect(proof().remarks).toContainEqual({ code: "tableFromMemory", about: "ISO 376:2011, table 2" });
  });

  // EURAMET cg-4 v2.0 and ISO 376:2011 annex C, formulas from memory; the figures computed independently.
  it("meets the uncertainty of the worked example, line by line", () => {
    const { inputs, expected_percent: want } = budget.worked_example;
    const got = proof(readings, {
      degree: inputs.degree,
      referenceRelative: inputs.U_force_machine_percent / 200,
      // The example states the resolution as a force; the gauge shows 0.1 units a kilonewton.
      resolution: (inputs.resolution_kN * published.worked_example.inputs.X_N) / inputs.FN_kN,
      temperature: { perKelvin: inputs.K_percent_per_degC / 100, rangeK: inputs.temperature_range_degC },
    });
    const line = (source: string) =>
      got.steps.map(
        (s) => (100 * s.uncertainty.contributions.find((c) => c.source === source)!.standard) / s.reference,
      );
    const all = (v: number) => got.steps.map(() => v);
    const relative = (values: readonly (number | undefined)[], wanted: readonly number[]) =>
      near(
        values.map((v, i) => v! / wanted[i]!),
        wanted.map(() => 1),
        1e-8,
      );
    relative(line("reference"), all(want.w1));
    relative(line("reproducibility"), want.w2);
    relative(line("repeatability"), want.w3);
    relative(line("resolution"), want.w4);
    relative(line("creep"), all(want.w5));
    relative(line("zero"), all(want.w6));
    relative(line("temperature"), all(want.w7));
    relative(line("interpolation"), want.w8);
    relative(
      got.steps.map((s) => (100 * s.uncertainty.standard) / s.reference),
      want.w_c,
    );
    relative(
      got.steps.map((s) => s.uncertainty.guideExpandedPct),
      want.W_k2,
    );
    relative(
      got.steps.map((s) => s.uncertainty.guideExpandedReversiblePct),
      want.W_k2_with_reversibility,
    );
  });

  it("never states less than the guide's factor of 2, and more where three series carry the budget", () => {
    for (const s of proof().steps) expect(s.uncertainty.coverageFactor).toBeGreaterThanOrEqual(2);
    expect(proof().steps[0]!.uncertainty.coverageFactor).toBeGreaterThan(2.1);
  });

  it.each([
    ["the second series at one position", (r: ProofReading) => r.run !== "2", "needsRepeat"],
    ["a mounting position", (r: ProofReading) => r.positionDeg !== 240, "needsPositions"],
    ["the zero after", (r: ProofReading) => r.direction !== "zeroAfter", "needsZeroReturn"],
    ["falling loads and creep", (r: ProofReading) => !/down|creep/.test(r.direction), "needsReversibilityOrCreep"],
  ])("gives no class without %s, and the errors it can", (_, keep, code) => {
    const got = proof(readings.filter(keep));
    expect(got.class).toBeUndefined();
    expect(codes(got)).toContain(code);
    expect(got.steps.map((s) => s.class)).toEqual(got.steps.map(() => undefined));
    expect(got.steps.every((s) => Number.isFinite(s.fc))).toBe(true);
  });

  it("shows a single run's curve and names everything the class lacks", () => {
    const got = proof(readings.filter((r) => r.run === "1" && r.direction === "up"));
    expect(codes(got)).toEqual(["needsPositions", "needsRepeat", "needsZeroReturn", "needsReversibilityOrCreep"]);
    expect(got.steps[0]).toMatchObject({ reference: 4, n: 1, b: undefined, bPrime: undefined, v: undefined });
  });

  it("finds falling loads written down as runs of their own", () => {
    const apart = readings.map((r) => (r.direction === "down" ? { ...r, run: `${r.run}b` } : r));
    near(
      proof(apart).steps.map((s) => s.v),
      expected.v,
      1e-8,
    );
    expect(proof(apart).class).toBe("0.5");
  });

  it("needs no run labels where positions and order tell the series", () => {
    const got = proof(readings.map((r) => ({ ...r, run: undefined, step: undefined })));
    near(
      got.steps.map((s) => s.b),
      expected.b,
      1e-8,
    );
    near(
      got.steps.map((s) => s.bPrime),
      expected.b_prime,
      1e-8,
    );
    expect(got.class).toBe("0.5");
  });

  it("takes loads that differ a little to one force, in proportion", () => {
    const shifted = readings.map((r) => {
      const factor = r.run === "3" ? 1.003 : r.run === "4" ? 0.998 : 1;
      return r.reference === 0 ? r : { ...r, reference: r.reference * factor, indication: r.indication * factor };
    });
    near(
      proof(shifted).steps.map((s) => s.b),
      expected.b,
      1e-8,
    );
  });

  it("keeps the class from reaching below what the resolution carries", () => {
    // 0.0004 units are 4 N: class 0.5 needs 2000 steps, 8 kN, and so misses the fifth of 20 kN.
    const got = proof(readings, { resolution: 0.0004 });
    expect(got.steps.map((s) => s.class)).toEqual(["1", "0.5", "0.5", "0.5", "0.5"]);
    expect(got.class).toBe("1");
  });

  it("keeps the class from being better than the reference allows", () => {
    expect(proof(readings, { referenceRelative: 0.04 / 200 }).class).toBe("1");
    expect(proof(readings, { referenceRelative: 0.02 / 200 }).class).toBe("0.5");
    const poor = proof(readings, { referenceRelative: 1 / 200 });
    expect(poor.class).toBeUndefined();
    expect(codes(poor)).toEqual(["outsideClasses"]);
  });

  it("gives no class that does not reach down to a fifth", () => {
    const got = proof(readings.filter((r) => r.reference !== 4));
    expect(got.class).toBeUndefined();
    expect(codes(got)).toEqual(["rangeTooShort"]);
  });

  it("gives no class to a rising series that falls on the way", () => {
    const rows = [...readings];
    const [a, b] = [
      rows.findIndex((r) => r.run === "2" && r.reference === 8),
      rows.findIndex((r) => r.run === "2" && r.reference === 16),
    ];
    [rows[a], rows[b]] = [rows[b]!, rows[a]!];
    expect(codes(proof(rows))).toEqual(["loadOutOfOrder"]);
  });

  it("averages a load that stands twice, and says so", () => {
    const twice = [...readings, { ...readings.find((r) => r.run === "2" && r.reference === 8)!, step: "2" }];
    expect(proof(twice).remarks).toContainEqual({ code: "loadTwice", about: "run 2, 8" });
  });

  it.each([
    [{ degree: 4 }, readings, /degree 1, 2 and 3, got 4/],
    [
      { degree: 3 },
      readings.filter((r) => r.reference <= 8),
      /degree 3 needs at least 3 different loads, the readings have 2/,
    ],
    [{}, [], /needs at least 1 different loads, the readings have 0/],
  ])("refuses %j when the readings do not carry it", (options, rows, words) => {
    const got = iso376Proof(rows, options);
    expect(isRefused(got) && got.refused).toMatch(words);
  });
});
