import { describe, expect, it } from "vitest";
import { predictionLimits } from "../../../app/trend/predictionLimits.ts";
import { toleranceFactor } from "../../../app/trend/toleranceFactor.ts";
import published from "../../published/tolerance-prediction-limits.json" with { type: "json" };

const [handbook, prediction, upper] = published.cases;

describe("toleranceFactor", () => {
  // NIST/SEMATECH e-Handbook 7.2.6.3; EPA 530/R-09-007, example 17-3: tolerance-prediction-limits.json.
  it("meets the two-sided factor of the e-Handbook, printed and recomputed", () => {
    const k = toleranceFactor(43, 0.9, 0.99, "two");
    expect(Math.abs(k - (handbook!.expected.published as { k2: number }).k2)).toBeLessThan(5e-8);
    expect(k / (handbook!.expected.recomputed as { k2: number }).k2).toBeCloseTo(1, 7);
  });

  it("meets the exact one-sided factors", () => {
    const exact = (handbook!.expected.recomputed as { k1_exact_noncentral_t: number }).k1_exact_noncentral_t;
    expect(toleranceFactor(43, 0.9, 0.99, "one") / exact).toBeCloseTo(1, 7);
    const factor = (upper!.expected.recomputed as { factor_exact: number }).factor_exact;
    expect(toleranceFactor(8, 0.95, 0.95, "one") / factor).toBeCloseTo(1, 7);
  });

  it("meets the printed upper limit of EPA example 17-3", () => {
    const {
      mean_log,
      sd_log,
      upper: limit,
    } = upper!.expected.published as { mean_log: number; sd_log: number; upper: number };
    const got = Math.exp(mean_log + toleranceFactor(8, 0.95, 0.95, "one") * sd_log);
    expect(Math.abs(got - limit)).toBeLessThan(0.00005);
  });

  it.each([
    [1, 0.9, 0.9],
    [8, 0.4, 0.9],
    [8, 0.9, 1],
  ])("refuses n = %i, coverage %f, confidence %f", (n, coverage, confidence) => {
    expect(() => toleranceFactor(n, coverage, confidence, "one")).toThrow(RangeError);
  });
});

describe("predictionLimits", () => {
  it("meets EPA example 18-1: four future values under 73.67", () => {
    const { background } = prediction!.inputs as { background: number[] };
    const { high } = predictionLimits(background, 4, 0.95, "one");
    expect(Math.abs(high - (prediction!.expected.published as { upper_limit: number }).upper_limit)).toBeLessThan(5e-6);
    expect(high / (prediction!.expected.recomputed as { upper_limit: number }).upper_limit).toBeCloseTo(1, 7);
  });

  it("is wider between two limits than beside one", () => {
    const values = Object.freeze([20, 20.4, 19.8, 20.1]);
    expect(predictionLimits(values, 1, 0.95, "two").low).toBeLessThan(predictionLimits(values, 1, 0.95, "one").low);
  });

  it("refuses a future of nothing", () => {
    expect(() => predictionLimits([1, 2], 0, 0.95, "one")).toThrow(RangeError);
  });
});
