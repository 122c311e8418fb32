import { describe, expect, it } from "vitest";
import { curveAt } from "../../../../app/correction/curveAt.ts";
import { curveUncertainty } from "../../../../app/correction/curveUncertainty.ts";
import type { GaugeCurve } from "../../../../app/correction/GaugeCurve.ts";
import { polynomialAt } from "../../../../app/numerics/polynomialAt.ts";
import { gaugeCurveOf } from "../../../../app/proof/after/gaugeCurveOf.ts";
import { iso376Proof } from "../../../../app/proof/iso376/iso376Proof.ts";
import { isRefused, type ProofRefused } from "../../../../app/proof/method/ProofOptions.ts";
import { polynomialProof } from "../../../../app/proof/method/polynomialProof.ts";
import pontius from "../../../published/nist-strd-pontius.json" with { type: "json" };
import { iso376Example } from "../../../support/iso376Example.ts";
import { plainReadings } from "../../../support/plainReadings.ts";

function made<T extends object>(value: T | ProofRefused): T {
  if (isRefused(value)) throw new Error(value.refused);
  return value;
}

describe("gaugeCurveOf", () => {
  // NIST StRD Pontius: 3 million pounds-force; its deflections stand here for a gauge that shows thousands of kN.
  const proof = made(polynomialProof(plainReadings(pontius.inputs.x, pontius.inputs.y), { degree: 2 }));
  const curve: GaugeCurve = made(gaugeCurveOf(proof, { reference: "lbf", indication: "MN" }, 3));

  it("leads back from an indication to the load that gives it", () => {
    for (const pounds of [150_000, 987_654, 1_705_105, 3_000_000]) {
      const shownN = polynomialAt(proof.fit, pounds).value * 1e6;
      const got = curveAt(curve, shownN).forceN;
      const u = proof.uncertaintyAt(pounds).expanded;
      expect(Math.abs(got / 4.4482216152605 - pounds)).toBeLessThan(0.02 * u);
    }
    expect(curve.version).toBe(3);
    expect(curve.fromN).toBeCloseTo(polynomialAt(proof.fit, 150_000).value * 1e6, 6);
    expect(curve.toN).toBeCloseTo(polynomialAt(proof.fit, 3_000_000).value * 1e6, 6);
  });

  it("carries the 95 % interval of each step into the relative uncertainty", () => {
    for (const step of proof.steps) {
      const relative = curveUncertainty(curve.uncertainty, polynomialAt(proof.fit, step.reference).value * 1e6)!;
      expect((relative * 1.959964 * step.reference) / step.uncertainty.expanded).toBeCloseTo(1, 6);
    }
  });

  it("is straight and without a constant for an exact gauge", () => {
    const exact = made(polynomialProof(plainReadings([1, 2, 3, 4, 5], [2, 4, 6, 8, 10]), { degree: 1 }));
    const { coefficients } = made(gaugeCurveOf(exact, { reference: "kN", indication: "kN" }, 1));
    expect(coefficients).toEqual([expect.closeTo(0, 9), expect.closeTo(0.5, 12)]);
  });

  it("serves every method: ISO 376's curve through zero stays through zero", () => {
    const iso = made(iso376Proof(iso376Example(), {}));
    const { coefficients, uncertainty } = made(gaugeCurveOf(iso, { reference: "kN", indication: "kN" }, 1));
    expect(coefficients[0]).toBe(0);
    expect(curveAt({ coefficients }, 1200.5833).forceN / 12_000).toBeCloseTo(1, 4);
    expect(uncertainty).toHaveLength(5);
  });

  it("keeps at most forty points of uncertainty, none better than its step", () => {
    const x = Array.from({ length: 90 }, (_, i) => 10 + i);
    const many = made(
      polynomialProof(
        plainReadings(
          x,
          x.map((v) => v + 0.01 * Math.sin(9 * v)),
        ),
        { degree: 1 },
      ),
    );
    const { uncertainty } = made(gaugeCurveOf(many, { reference: "N", indication: "N" }, 1));
    expect(uncertainty).toHaveLength(40);
    for (const s of many.steps)
      expect(curveUncertainty(uncertainty, s.reference)! * 1.96 * s.reference).toBeGreaterThan(
        0.99 * s.uncertainty.expanded,
      );
  });

  it.each([
    ["a curve that turns back", [1, 2, 3, 4, 5, 6], [1, 3, 4, 4, 3, 1], 2, /does not rise/],
    ["an indication that falls with the load", [1, 2, 3, 4], [-1, -2, -3, -4], 1, /does not rise/],
    ["indications below zero throughout", [1, 2, 3, 4], [-9, -8, -7, -6], 1, /not above zero/],
  ])("refuses %s", (_, x, y, degree, words) => {
    const got = gaugeCurveOf(
      made(polynomialProof(plainReadings(x, y), { degree })),
      { reference: "N", indication: "N" },
      1,
    );
    expect(isRefused(got) && got.refused).toMatch(words);
  });
});
