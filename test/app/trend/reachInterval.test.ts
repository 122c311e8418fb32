import { describe, expect, it } from "vitest";
import { studentQuantile } from "../../../app/numerics/studentQuantile.ts";
import { leastSquaresLine } from "../../../app/trend/leastSquaresLine.ts";
import { bandHalf, reachInterval } from "../../../app/trend/reachInterval.ts";
import published from "../../published/inverse-prediction.json" with { type: "json" };

type Inputs = { x?: number[]; y?: number[]; y0: number[]; level: number; same_data_as?: string };
const inputsOf = (name: string): Inputs => published.cases.find((c) => c.name === name)!.inputs;
const cases = published.cases
  .filter((c) => c.inputs.mean_response)
  .map((c) => ({ ...c, data: c.inputs.same_data_as === undefined ? c.inputs : inputsOf(c.inputs.same_data_as) }));

describe("reachInterval", () => {
  // Regression Analysis: Concepts and Applications (1994), ch. 6; inverse estimation article (2014): inverse-prediction.json.
  it.each(cases)("meets the inversion interval of $name", ({ inputs, data, expected }) => {
    const line = leastSquaresLine(data.x!, data.y!)!;
    const t = studentQuantile((1 + inputs.level) / 2, line.degreesOfFreedom);
    const got = reachInterval(line, inputs.y0[0]!, { t })!;
    expect(got.low / expected.recomputed.lower).toBeCloseTo(1, 9);
    expect(got.high / expected.recomputed.upper).toBeCloseTo(1, 9);
    const printed = expected.published!;
    const halfDigit = 0.5 * 10 ** -(String(printed.lower).split(".")[1]?.length ?? 0);
    expect(Math.abs(got.low - printed.lower)).toBeLessThan(halfDigit);
  });

  it("has its ends where the band's edges cross the value, shared uncertainty and memory included", () => {
    const line = leastSquaresLine([0, 1, 2, 3, 4, 5], [10, 9.1, 8.3, 6.9, 6.1, 5])!;
    const options = { t: 2.1, sharedHalf: 0.2, memory: 1.5 };
    const { low, high } = reachInterval(line, 2, options)!;
    const mid = (x: number) => line.intercept + line.slope * x;
    expect(mid(low) - bandHalf(line, low, options)).toBeCloseTo(2, 12);
    expect(mid(high) + bandHalf(line, high, options)).toBeCloseTo(2, 12);
  });

  it("has no finite interval where the slope may be 0", () => {
    const line = leastSquaresLine([0, 1, 2, 3], [5, 7, 4, 6])!;
    expect(reachInterval(line, 2, { t: 2.9 })).toBeUndefined();
  });
});
