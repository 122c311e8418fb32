import { describe, expect, it } from "vitest";
import { coverageFactorOf } from "../../../app/verdict/coverageFactorOf.ts";
import gum from "../../published/gum-annex-examples.json" with { type: "json" };

const table = gum.cases.find((c) => c.name.startsWith("G.2"))!.t_by_degrees_of_freedom!;

describe("coverageFactorOf", () => {
  it("is 2, and 1.645 under ISO 14253-1, when nothing is known of degrees of freedom", () => {
    expect(coverageFactorOf({ rule: "guarded" }, undefined)).toBe(2);
    expect(coverageFactorOf({ rule: "iso14253" }, Infinity)).toBe(1.645);
  });

  it("is what the rule states, whatever the degrees of freedom", () => {
    expect(coverageFactorOf({ rule: "guarded", coverageFactor: 3 }, 2)).toBe(3);
  });

  // JCGM 100:2008 table G.2, columns 95.45 % (two sides) and 90 % (95 % on one side)
  it.each(["1", "2", "4", "10", "50"])(
    "widens by Student's t at %s degrees of freedom as table G.2 does",
    (degrees) => {
      const row = table[degrees as keyof typeof table];
      expect(Math.abs(coverageFactorOf({ rule: "guarded" }, Number(degrees)) - row[3]!)).toBeLessThan(0.0051);
      // 1.645 stands for 1.64485: at one degree of freedom that alone moves the factor by 0.0019
      const iso = coverageFactorOf({ rule: "iso14253" }, Number(degrees)) - (degrees === "1" ? 0.0019 : 0);
      expect(Math.abs(iso - row[1]!)).toBeLessThan(0.0051);
    },
  );

  it("cuts effective degrees of freedom down to a whole number, but not a rounded whole one", () => {
    expect(coverageFactorOf({ rule: "guarded" }, 4.99)).toBe(coverageFactorOf({ rule: "guarded" }, 4));
    expect(coverageFactorOf({ rule: "guarded" }, 5 - 1e-14)).toBe(coverageFactorOf({ rule: "guarded" }, 5));
  });
});
