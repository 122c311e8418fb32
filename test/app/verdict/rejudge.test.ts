import { describe, expect, it } from "vitest";
import type { Contribution } from "../../../app/correction/Budget.ts";
import { combine } from "../../../app/correction/combine.ts";
import { judge } from "../../../app/verdict/judge.ts";
import { type Filed, rejudge } from "../../../app/verdict/rejudge.ts";
import { uncertaintyOf } from "../../../app/verdict/uncertaintyOf.ts";

const line = (standardN: number, degreesOfFreedom: number): Contribution => ({
  source: "repeatability",
  type: "A",
  distribution: degreesOfFreedom === Infinity ? "normal" : "t",
  standardN,
  degreesOfFreedom,
  assumed: false,
});
const budget = combine([line(80, 4), line(40, Infinity)]);
/** As the data file holds it: JSON knows no infinity. */
const filed: Filed = JSON.parse(
  JSON.stringify({
    valueN: 17_000,
    budget,
    baseline: { checkId: "x", valueN: 18_000, standardUncertaintyN: 90, correlation: 0.2 },
    previous: null,
  }),
);
const today = {
  limits: { minimumN: 16_800, maximumN: 20_000 },
  rule: { rule: "probability" as const },
  cautionDrop: 0.1,
  actDrop: 0.2,
};

describe("rejudge", () => {
  it("says of a filed check what it would say of it fresh, through JSON and back", () => {
    const fresh = judge({ valueN: 17_000, ...today, ...uncertaintyOf(budget), baseline: filed.baseline! });
    expect(rejudge(filed, today)).toEqual(fresh);
    expect(fresh.reasons.length).toBeGreaterThan(0);
  });

  it("follows today's limits and rule, not those of the day", () => {
    expect(rejudge(filed, { ...today, limits: { minimumN: 17_500 }, rule: { rule: "simple" } }).verdict).toBe("stop");
    expect(rejudge(filed, { ...today, limits: {}, cautionDrop: 0.05 }).verdict).toBe("watch");
  });

  it.each(["simple", "guarded", "iso14253", "ilacG8", "probability"] as const)(
    "says the same under %s whether or not the probability is told",
    (rule) => {
      const terms = { ...today, rule: { rule } };
      const told = rejudge(filed, terms);
      const untold = rejudge(filed, terms, "untold");
      expect({ ...untold, probabilityConforming: told.probabilityConforming }).toEqual(told);
      expect(untold.probabilityConforming === undefined).toBe(rule !== "probability");
    },
  );

  it("cannot tell of a check without a force or without a budget", () => {
    expect(rejudge({ ...filed, valueN: null }, today).verdict).toBe("cannotTell");
    expect(rejudge({ ...filed, budget: null }, today).verdict).toBe("cannotTell");
  });

  it("leaves the filed check as it is", () => {
    const before = JSON.stringify(filed);
    rejudge(filed, today);
    expect(JSON.stringify(filed)).toBe(before);
  });
});
