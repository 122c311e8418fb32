import { describe, expect, it } from "vitest";
import { correctForce } from "../../../app/correction/correctForce.ts";
import { curveAt } from "../../../app/correction/curveAt.ts";
import pontius from "../../published/nist-strd-pontius.json" with { type: "json" };

const curve = (coefficients: number[], fromN = 2_000, toN = 50_000) => ({
  version: 3,
  coefficients,
  fromN,
  toN,
  uncertainty: [],
});

describe("correctForce", () => {
  it("keeps every step and version: zero off, through the curve, times the adapter", () => {
    const step = correctForce(18_050, 50, { curve: curve([20, 1.001]), adapter: { scale: 0.998, version: 2 } });
    expect(step).toMatchObject({
      indicationN: 18_050,
      zeroN: 50,
      netN: 18_000,
      curveVersion: 3,
      adapterScale: 0.998,
      adapterVersion: 2,
    });
    expect(step.curvedN).toBeCloseTo(18_038, 9);
    expect(step.correctedN).toBeCloseTo(18_038 * 0.998, 9);
    expect(step.sensitivity).toBeCloseTo(1.001 * 0.998, 12);
  });

  it("takes the net indication for the force where nothing was proved", () => {
    expect(correctForce(18_050, 50, {})).toMatchObject({
      correctedN: 18_000,
      curveVersion: undefined,
      adapterVersion: undefined,
      outsideProof: false,
    });
  });

  it("says when the indication lies outside the proof", () => {
    const at = (netN: number) => correctForce(netN, 0, { curve: curve([0, 1]) }).outsideProof;
    expect([at(1_999), at(2_000), at(50_000), at(50_001)]).toEqual([true, false, false, true]);
  });

  it.each([0, -1, NaN, Infinity])("refuses an adapter of scale %d", (scale) => {
    expect(() => correctForce(1, 0, { adapter: { scale, version: 1 } })).toThrow(RangeError);
  });

  it("refuses what is not a reading", () => {
    expect(() => correctForce(NaN, 0, {})).toThrow(RangeError);
    expect(() => correctForce(1, Infinity, {})).toThrow(RangeError);
  });
});

describe("curveAt", () => {
  // NIST StRD, Pontius: load cell calibration with its certified quadratic; the residual standard deviation is certified too
  it("carries the certified load cell curve of NIST: residuals of all 40 readings meet the certified 2.05e-4", () => {
    const coefficients = pontius.expected.coefficients;
    const { x, y } = pontius.inputs;
    let squares = 0;
    for (const [i, load] of x.entries()) squares += (curveAt({ coefficients }, load).forceN - y[i]!) ** 2;
    const certified = pontius.expected.residual_sd;
    expect(Math.abs(Math.sqrt(squares / (x.length - 3)) / certified - 1)).toBeLessThan(1e-9);
  });

  it("gives the slope beside the force", () => {
    const { forceN, slope } = curveAt({ coefficients: [1, 2, 3, 4] }, 2);
    expect([forceN, slope]).toEqual([1 + 4 + 12 + 32, 2 + 12 + 48]);
  });

  it("refuses a curve without coefficients", () => {
    expect(() => curveAt({ coefficients: [] }, 1)).toThrow(RangeError);
  });
});
