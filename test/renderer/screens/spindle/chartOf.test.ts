import { describe, expect, it } from "vitest";
import { zoneRules } from "../../../../app/trend/control/runRules.ts";
import {
  type ChartKind,
  type ChosenRules,
  chartsOf,
  falseAlarms,
  firstRules,
  presetOf,
  signalsOf,
} from "../../../../renderer/screens/spindle/control/chartOf.ts";
import { seededNormal } from "../../../support/seededNormal.ts";

const zone: ChosenRules = { rules: zoneRules, ranges: false };

describe("how often a chart errs", () => {
  // D. C. Montgomery, Introduction to Statistical Quality Control, 6th ed.: 370 for single values, 465 for k 0.5 and h 5 (from memory);
  // NIST/SEMATECH e-Handbook 6.3.2: 91.75 for the zone rules.
  it.each([
    ["individuals", firstRules, 370, 0.5],
    ["individuals", zone, 91.75, 0.005],
    ["cusum", firstRules, 465, 0.5],
  ] as const)("%s: run length with known limits", (kind, chosen, length, within) => {
    expect(Math.abs(falseAlarms(kind, chosen)!.runLength - length)).toBeLessThan(within);
  });

  it("is stated for limits from eight checks as a simulation finds it", () => {
    const normal = seededNormal(11);
    const runs = 1_500;
    const cases: readonly (readonly [ChartKind, ChosenRules])[] = [
      ["calm", firstRules],
      ["cusum", firstRules],
      ["ewma", firstRules],
      ["individuals", firstRules],
      ["individuals", zone],
    ];
    const alarmed = cases.map(() => 0);
    for (let run = 0; run < runs; run += 1) {
      const points = Array.from({ length: 48 }, (_, i) => ({
        checkId: String(i),
        x: i,
        atMs: i,
        valueN: 18_000 + 90 * normal(),
        segment: 0,
        stray: false,
        gaugeChanged: false,
        adapterChanged: false,
      }));
      for (const [i, [kind, chosen]] of cases.entries()) {
        if (signalsOf(chartsOf(points, kind, chosen)!, kind).length > 0) alarmed[i]! += 1;
      }
    }
    for (const [i, [kind, chosen]] of cases.entries()) {
      const stated = falseAlarms(kind, chosen)!.withinForty;
      const error = Math.sqrt((stated * (1 - stated)) / runs);
      expect(Math.abs(alarmed[i]! / runs - stated)).toBeLessThan(3 * error + 0.005); // stated in whole percent
    }
  });

  it("is not made up for a choice of rules without a figure", () => {
    expect(falseAlarms("individuals", { rules: ["sixRising"], ranges: false })).toBeUndefined();
    expect(falseAlarms("individuals", { ...firstRules, ranges: true })).toBeUndefined();
  });
});

describe("presetOf", () => {
  it("knows the sets in any order, and calls all else an own choice", () => {
    expect(presetOf(firstRules)).toBe("one");
    expect(presetOf({ rules: [...zoneRules].reverse(), ranges: false })).toBe("zone");
    expect(presetOf({ ...firstRules, ranges: true })).toBe("own");
  });
});
