import { describe, expect, it } from "vitest";
import { stepMemory } from "../../../../app/trend/step/stepMemory.ts";
import { seededNormal } from "../../../support/seededNormal.ts";

const normal = seededNormal(51);
const independent = Float64Array.from({ length: 400 }, normal);

describe("stepMemory", () => {
  it("is 1 for independent values, under a slope and over steps too", () => {
    expect(stepMemory(independent)).toBe(1);
    expect(stepMemory(independent.map((v, i) => v - 0.02 * i))).toBe(1);
    expect(stepMemory(independent.map((v, i) => v - 20 * Math.floor(i / 40)))).toBe(1);
  });

  it("is near (1 + r)/(1 - r) for values of memory r", () => {
    let last = 0;
    const values = Float64Array.from({ length: 4000 }, () => {
      last = 0.5 * last + Math.sqrt(0.75) * normal();
      return last;
    });
    expect(Math.abs(stepMemory(values) - 3)).toBeLessThan(0.4);
  });

  it("does not judge fewer than twelve values, nor values that are equal", () => {
    expect(stepMemory(Float64Array.of(1, 1, 1, 1, 1, 9, 9, 9, 9, 9, 9))).toBe(1);
    expect(stepMemory(new Float64Array(20).fill(3))).toBe(1);
  });
});
