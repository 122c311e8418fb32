import { describe, expect, it } from "vitest";
import type { ProofReading } from "../../../../app/proof/data/ProofReading.ts";
import { isRefused, type ProofOptions } from "../../../../app/proof/method/ProofOptions.ts";
import { type PolynomialProof, polynomialProof } from "../../../../app/proof/method/polynomialProof.ts";
import caseStudy from "../../../published/nist-load-cell-case-study.json" with { type: "json" };
import pontius from "../../../published/nist-strd-pontius.json" with { type: "json" };
import wampler1 from "../../../published/nist-strd-wampler1.json" with { type: "json" };
import { plainReadings } from "../../../support/plainReadings.ts";

const { x, y } = pontius.inputs;
const readings = Object.freeze(plainReadings(x, y));
const inRuns = readings.map((r, i) => ({ ...r, run: i < 20 ? "1" : "2" }));
function proof(rows: readonly ProofReading[] = readings, options: ProofOptions = {}): PolynomialProof {
  const got = polynomialProof(rows, options);
  if (isRefused(got)) throw new Error(got.refused);
  return got;
}
const codes = (p: PolynomialProof) => p.remarks.map((r) => r.code);

describe("polynomialProof", () => {
  // NIST StRD Pontius and e-Handbook 4.6.1: a load cell, quadratic.
  it("chooses the quadratic for NIST's load cell and meets its certified figures", () => {
    const got = proof();
    expect(got.fit.degree).toBe(2);
    expect(got.fit.residualSd / pontius.expected.residual_sd).toBeCloseTo(1, 11);
    expect(got.lackOfFit!.f / caseStudy.expected.quadratic.recomputed.lack_of_fit_F).toBeCloseTo(1, 8);
    expect(codes(got)).not.toContain("lackOfFit");
    expect(got.steps).toHaveLength(20);
    expect(got.steps[0]).toMatchObject({ reference: 150_000, n: 2, net: expect.closeTo(0.110355, 12) });
  });

  it("says when the curve misses repeated loads, with NIST's F for the line", () => {
    const got = proof(readings, { degree: 1 });
    expect(got.remarks.find((r) => r.code === "lackOfFit")!.about).toContain("F = 214.7");
  });

  it("leaves residuals of an exact polynomial at zero (NIST StRD Wampler1)", () => {
    const got = proof(plainReadings(wampler1.inputs.x, wampler1.inputs.y), { degree: 5 });
    expect(Math.max(...got.fit.residuals.map(Math.abs))).toBeLessThan(1e-20);
  });

  it("states the curve's own interval where nothing else is known: t x s x root of leverage, as a force", () => {
    const at = proof().uncertaintyAt(1.7e6);
    expect(at.degreesOfFreedom).toBeCloseTo(37, 9);
    expect(at.coverageFactor).toBeCloseTo(2.0262, 4); // Student's t, 37 degrees of freedom, JCGM 100 table G.2 lies on both sides
    expect(at.contributions.map((c) => c.source)).toEqual(["curve"]);
  });

  it("widens the interval where whole runs differ, and keeps the curve", () => {
    const steeper = inRuns.map((r) => (r.run === "2" ? { ...r, indication: r.indication * 1.0005 } : r));
    const named = proof(steeper, { degree: 2 });
    const nameless = proof(
      steeper.map((r) => ({ ...r, run: undefined })),
      { degree: 2 },
    );
    expect(named.fit.coefficients).toEqual(nameless.fit.coefficients);
    const [a, b] = [named.uncertaintyAt(3e6), nameless.uncertaintyAt(3e6)];
    expect(a.expanded).toBeGreaterThan(3 * b.expanded);
    expect(a.degreesOfFreedom).toBeLessThan(1.1); // two runs are one degree of freedom about the slope
    expect(codes(nameless)).toContain("runsUnknown");
    expect(codes(named)).not.toContain("runsUnknown");
  });

  it("adds reference, zero, creep, temperature and a coarse resolution to the budget", () => {
    const ends = (direction: ProofReading["direction"], indication: number): ProofReading => ({
      ...inRuns[0]!,
      reference: 0,
      direction,
      indication,
    });
    const rows = [
      ends("zeroBefore", 0),
      ...inRuns.slice(0, 20),
      ends("creep30", 0.001),
      ends("creep300", 0.003),
      ends("zeroAfter", 0.002),
      ...inRuns.slice(20),
    ];
    const got = proof(rows, {
      degree: 2,
      referenceRelative: 1e-4,
      resolution: 0.01,
      temperature: { perKelvin: 1e-4, rangeK: 4 },
    });
    const top = got.uncertaintyAt(3e6);
    const line = Object.fromEntries(top.contributions.map((c) => [c.source, c.standard]));
    const zero = 0.002 / 2.16844; // of the first run's greatest indication
    expect(got.f0).toBeCloseTo(100 * zero, 10);
    expect(line.reference).toBeCloseTo(300, 9);
    expect(line.zero).toBeCloseTo((3e6 * zero) / Math.sqrt(12), 6);
    expect(line.creep).toBeCloseTo((3e6 * zero) / Math.sqrt(3), 6);
    expect(line.temperature).toBeCloseTo((3e6 * 2e-4) / Math.sqrt(3), 6);
    expect(line.resolution! / ((0.01 / Math.sqrt(12)) * got.fit.coefficients[1]! ** -1)).toBeCloseTo(1, 1);
    expect(top.standard).toBeCloseTo(Math.hypot(...Object.values(line)), 6);
  });

  it("takes each run's own zero off, the last one where a run has none", () => {
    const zero = (run: string, indication: number): ProofReading => ({
      ...inRuns[0]!,
      run,
      reference: 0,
      direction: "zeroBefore",
      indication,
    });
    const offset = inRuns.map((r) => ({ ...r, indication: r.indication + (r.run === "1" ? 0.5 : 0.25) }));
    const got = proof([zero("1", 0.5), ...offset.slice(0, 20), zero("2", 0.25), ...offset.slice(20)], { degree: 2 });
    expect(got.fit.coefficients[0]).toBeCloseTo(pontius.expected.coefficients[0]!, 12);
    const once = proof([zero("1", 0.5), ...inRuns.map((r) => ({ ...r, indication: r.indication + 0.5 }))], {
      degree: 2,
    });
    expect(once.fit.coefficients[0]).toBeCloseTo(pontius.expected.coefficients[0]!, 12);
  });

  it("does not fit falling loads", () => {
    const down = readings.map((r) => ({ ...r, direction: "down" as const, indication: r.indication + 1 }));
    expect(proof([...readings, ...down]).fit.coefficients).toEqual(proof().fit.coefficients);
  });

  it("draws an uncertainty curve that lies below no step", () => {
    const got = proof(readings, { referenceRelative: 2e-4 });
    const { constant, proportional } = got.uncertaintyCurve;
    for (const s of got.steps)
      expect(Math.hypot(constant, proportional * s.reference)).toBeGreaterThanOrEqual(
        s.uncertainty.expanded * (1 - 1e-12),
      );
  });

  it.each([
    [
      "three loads and degree 3",
      plainReadings([1, 2, 3, 1, 2, 3], [1, 2, 3, 1, 2, 3]),
      { degree: 3 },
      /degree 3 needs at least 4 different loads, the readings have 3/,
    ],
    [
      "loads that nearly coincide",
      plainReadings([10, 10.05, 20, 20.05, 30], [1, 1, 2, 2, 3]),
      { degree: 3 },
      /the readings have 3/,
    ],
    ["as many coefficients as readings", plainReadings([1, 2, 3], [1, 2, 3]), { degree: 2 }, /none is left over/],
    ["degree 0", readings, { degree: 0 }, /from 1 to 12, got 0/],
    ["degree 1.5", readings, { degree: 1.5 }, /got 1.5/],
    ["one reading", readings.slice(0, 1), {}, /needs at least 2 different loads/],
    ["no reading", [], {}, /needs at least 2 different loads, the readings have 0/],
  ])("refuses %s and says why", (_, rows, options, words) => {
    const got = polynomialProof(rows, options);
    expect(isRefused(got) && got.refused).toMatch(words);
  });
});
