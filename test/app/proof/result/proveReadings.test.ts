import { describe, expect, it } from "vitest";
import { proofResult } from "../../../../app/ledger/proofResult.ts";
import { isRefused } from "../../../../app/proof/method/ProofOptions.ts";
import { type ProofTerms, type Proved, proveReadings } from "../../../../app/proof/result/proveReadings.ts";
import lower from "../../../published/astm-e74-lower-limit.json" with { type: "json" };
import iso from "../../../published/iso376-classes.json" with { type: "json" };
import pontius from "../../../published/nist-strd-pontius.json" with { type: "json" };
import { iso376Example } from "../../../support/iso376Example.ts";
import { plainReadings } from "../../../support/plainReadings.ts";

function proved(...args: Parameters<typeof proveReadings>): Proved {
  const got = proveReadings(...args);
  if (isRefused(got)) throw new Error(got.refused);
  return got;
}
const plain: ProofTerms = { options: {} };
const load = Object.freeze(plainReadings(pontius.inputs.x, pontius.inputs.y));

describe("proveReadings", () => {
  // NIST StRD Pontius: certified coefficients of a load cell's curve.
  it("carries the certified curve of NIST's load cell into the one form of result", () => {
    const { result } = proved("polynomial", load, plain);
    const { coefficients, residual_sd } = pontius.expected;
    for (const [i, c] of coefficients.entries()) expect(result.fit!.coefficients[i]! / c).toBeCloseTo(1, 9);
    expect(result.fit!.residualSdN / residual_sd).toBeCloseTo(1, 9);
    expect(result).toMatchObject({
      n: load.length,
      class: null,
      missing: [{ code: "noClassInMethod" }],
      conformity: null,
    });
    for (const step of result.steps) expect(step.residualN).toBeCloseTo(step.netN - step.fittedN!, 12);
  });

  // Constructed on Pontius by the rules of ASTM E74-18 (partly from memory).
  it("carries the lower limit factor, and its class", () => {
    const { result } = proved("astm-e74", load, plain);
    expect(result.lowerLimitFactorN! / lower.worked_example.expected.LLF).toBeCloseTo(1, 7);
    expect(result.class).toBe("AA");
    expect(result.classRanges.map((r) => r.class)).toEqual(["AA", "A"]);
    expect(result.degreeTrials.length).toBeGreaterThan(1);
  });

  // ISO 376:2011, worked example of the published file (computed there; table from memory).
  it("carries the relative errors and the class of ISO 376", () => {
    const { result } = proved("iso376", iso376Example(), plain);
    const { expected } = iso.worked_example;
    const near = (values: readonly number[], digits: number) => values.map((v) => expect.closeTo(v, digits));
    expect(result.steps.map((s) => s.b)).toEqual(near(expected.b, 8));
    expect(result.steps.map((s) => s.bPrime)).toEqual(near(expected.b_prime, 8));
    expect(result.steps.map((s) => s.fc)).toEqual(near(expected.fc, 8));
    expect(result.steps.map((s) => s.class)).toEqual(expected.class_by_step);
    expect([result.zeroPct, result.creepPct]).toEqual(near([expected.f0, expected.c], 9));
    expect(result.steps.every((s) => s.uncertainty.guideExpandedPct !== null)).toBe(true);
    expect(result.missing).toEqual([]);
  });

  it("decides a working check, with a line beside the errors to correct with", () => {
    const readings = ["1", "2", "3"].flatMap((run) =>
      [1, 2, 3, 4].map((k) => ({
        reference: 1_000 * k,
        indication: 1_000 * k * (1.004 + 1e-4 * Number(run)),
        direction: "up" as const,
        run,
        step: String(k),
        positionDeg: 0,
      })),
    );
    const terms: ProofTerms = { options: { referenceRelative: 1e-4 }, mpe: { kind: "relative", fraction: 0.01 } };
    const { result, curve } = proved("working", readings, terms);
    expect(result.conformity).toBe("conforming");
    expect(result.steps.map((s) => s.q)).toEqual([1, 2, 3, 4].map(() => expect.closeTo(0.42, 9)));
    expect(curve?.fit.coefficients[1]).toBeCloseTo(1.0042, 9);
    const tight = { ...terms, mpe: { kind: "relative", fraction: 0.003 } as const };
    expect(proved("working", readings, tight).result.conformity).toBe("nonConforming");
  });

  it("takes the reference's uncertainty force by force where it is known so", () => {
    const at = (share: ProofTerms["options"]["referenceRelative"]) =>
      proved("polynomial", load, { options: { referenceRelative: share } }).result.steps.map(
        (s) => s.uncertainty.contributions.find((c) => c.source === "reference")!.standardN / s.referenceN,
      );
    const forces = proved("polynomial", load, plain).result.steps.map((s) => s.referenceN);
    expect(at(2e-4)).toEqual(forces.map(() => expect.closeTo(2e-4, 15)));
    expect(at((force) => 1 / force)).toEqual(forces.map((f) => expect.closeTo(1 / f, 15)));
  });

  it("makes what the ledger keeps, of every method", () => {
    for (const method of ["polynomial", "astm-e74"] as const) {
      const { result } = proved(method, load, plain);
      expect(proofResult.parse(JSON.parse(JSON.stringify(result)))).toEqual(JSON.parse(JSON.stringify(result)));
    }
    proofResult.parse(JSON.parse(JSON.stringify(proved("iso376", iso376Example(), plain).result)));
  });

  it("hands a refusal on", () => {
    expect(proveReadings("polynomial", load.slice(0, 1), plain)).toMatchObject({ refused: expect.any(String) });
    expect(proveReadings("working", [], plain)).toMatchObject({ refused: expect.any(String) });
  });
});
