import { describe, expect, it } from "vitest";
import { creepOf, meanForceN, scatterOf, soundUnit } from "../../../simulator/physics/clampingUnit.ts";

describe("a clamping unit", () => {
  it("holds with what it was made for when it is sound and greased", () => {
    for (const wedge of [1, 3]) expect(meanForceN(soundUnit(18_000, wedge))).toBeCloseTo(18_000, 6);
  });

  it("loses 1 to 5 % for each broken disc of its pack (common practice, no source)", () => {
    const unit = soundUnit(18_000);
    for (let broken = 1; broken <= 6; broken += 1) {
      const lost = 1 - meanForceN({ ...unit, brokenDiscs: broken }) / 18_000;
      expect(lost / broken).toBeGreaterThanOrEqual(0.01);
      expect(lost / broken).toBeLessThanOrEqual(0.05);
    }
  });

  it("loses what its springs lose", () => {
    expect(meanForceN({ ...soundUnit(18_000), tired: 0.1 })).toBeCloseTo(16_200, 6);
  });

  it("holds less, scatters more and creeps more when it runs dry", () => {
    const greased = soundUnit(18_000);
    const dry = { ...greased, dryness: 1 };
    expect(meanForceN(dry)).toBeLessThan(0.85 * 18_000);
    expect(scatterOf(dry)).toBeGreaterThan(5 * scatterOf(greased));
    expect(creepOf(dry)).toBeGreaterThan(3 * creepOf(greased));
  });

  it.each([0, -1, Number.NaN])("refuses a force of %d", (forceN) => {
    expect(() => soundUnit(forceN)).toThrow(RangeError);
  });
});
