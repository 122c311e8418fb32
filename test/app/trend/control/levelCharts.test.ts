import { describe, expect, it } from "vitest";
import { cusumChart } from "../../../../app/trend/control/cusumChart.ts";
import { ewmaChart } from "../../../../app/trend/control/ewmaChart.ts";
import { individualsChart } from "../../../../app/trend/control/individualsChart.ts";
import { levelCharts } from "../../../../app/trend/control/levelCharts.ts";
import { defaultRunRules, zoneRules } from "../../../../app/trend/control/runRules.ts";
import { watchLevel } from "../../../../app/trend/step/watchLevel.ts";
import { seededNormal } from "../../../support/seededNormal.ts";

const options = { rules: defaultRunRules, ranges: false, lambda: 0.2, k: 2, h: 4 };
const first = [18.02, 17.98, 18.01, 17.99, 18.03, 17.97, 18, 18];

describe("levelCharts", () => {
  it("takes its limits from the first eight checks alone", () => {
    const got = levelCharts(Float64Array.of(...first, 30, 1), [], options)!;
    const known = individualsChart(first);
    expect(got.baseline).toBe(8);
    expect([got.individuals.center, got.individuals.upper, got.individuals.lower]).toEqual([
      known.center,
      known.upper,
      known.lower,
    ]);
  });

  it("says nothing with eight checks, without scatter, or with eight of which one stands off alone", () => {
    expect(levelCharts(Float64Array.from(first), [], options)).toBeUndefined();
    expect(levelCharts(new Float64Array(12).fill(18), [], options)).toBeUndefined();
    expect(levelCharts(Float64Array.of(...first, 18), [3], options)).toBeUndefined();
  });

  it("leaves a stray out of the baseline, so that it does not widen the limits", () => {
    const withStray = Float64Array.of(...first.slice(0, 4), 12, ...first.slice(4), 18, 17.5);
    const got = levelCharts(withStray, [4], options)!;
    expect(got.baseline).toBe(9);
    expect(got.individuals.upper).toBe(individualsChart(first).upper);
    expect(got.individuals.signals).toEqual([{ at: 10, code: "beyondThree", side: "low" }]);
  });

  it("alarms where the level alarm does, with its k and h", () => {
    const normal = seededNormal(7);
    for (let run = 0; run < 200; run += 1) {
      const values = Float64Array.from({ length: 24 }, (_, i) => 18_000 + 60 * normal() - (i > 14 ? 250 : 0));
      const alarm = watchLevel(values)?.alarm;
      const found = levelCharts(values, [], options)!.cusum.signals[0];
      expect(found).toEqual(
        alarm && { at: alarm.at, code: "sumOff", side: alarm.direction === "down" ? "low" : "high" },
      );
    }
  });

  it("runs average and sum over the later checks as the plain charts do", () => {
    const later = [17.99, 17.96, 17.95, 17.94, 17.93];
    const got = levelCharts(Float64Array.of(...first, ...later), [], { ...options, k: 0.5, h: 5 })!;
    const target = got.ewma.center;
    const sigma = Math.sqrt(first.reduce((sum, v) => sum + (v - target) ** 2, 0) / 7);
    const ewma = ewmaChart(later, { lambda: 0.2, target, sigma, limits: "steady" });
    const cusum = cusumChart(later, { k: 0.5, h: 5, target, sigma });
    for (const i of later.keys()) {
      expect(got.ewma.values[8 + i]).toBeCloseTo(ewma.values[i]!, 12);
      expect(got.cusum.low[8 + i]).toBeCloseTo(cusum.low[i]!, 9);
    }
    expect(got.ewma.values[7]).toBeNaN();
    expect(got.ewma.signals.map(({ at }) => at)).toEqual(ewma.signals.map((n) => 7 + n));
    expect(got.cusum.signals.map(({ at }) => at)).toEqual(cusum.signals.map((n) => 7 + n));
  });

  it("tells a rule by its code, and a jump only where ranges were asked for", () => {
    const values = Float64Array.of(...first, 18.06, 17.9);
    const got = (more: object) =>
      levelCharts(values, [], { ...options, ...more })!.individuals.signals.map(({ at, code }) => [at, code]);
    expect(got({})).toEqual([[9, "beyondThree"]]);
    expect(got({ rules: [], ranges: true })).toEqual([[9, "rangeAbove"]]);
    expect(got({ rules: zoneRules })).toEqual([[9, "beyondThree"]]);
  });
});
