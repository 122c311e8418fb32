import { describe, expect, it } from "vitest";
import type { Contribution } from "../../../app/correction/Budget.ts";
import { combine } from "../../../app/correction/combine.ts";
import { uncertaintyOf } from "../../../app/verdict/uncertaintyOf.ts";
import { whatSettles } from "../../../app/verdict/whatSettles.ts";
import { whatSettlesFiled } from "../../../app/verdict/whatSettlesFiled.ts";

const line = (source: Contribution["source"], standardN: number, degreesOfFreedom: number): Contribution => ({
  source,
  type: "A",
  distribution: degreesOfFreedom === Infinity ? "normal" : "t",
  standardN,
  degreesOfFreedom,
  assumed: false,
});
const contributions = [line("repeatability", 60, 2), line("gaugeProof", 30, Infinity)];
const budget = combine(contributions);
const terms = {
  limits: { minimumN: 16_800, maximumN: 20_000 },
  rule: { rule: "iso14253" as const },
  cautionDrop: 0.1,
  actDrop: 0.2,
};
const filed = (valueN: number | null) =>
  JSON.parse(JSON.stringify({ valueN, budget, baseline: null, previous: null, ...terms })); // as the data file holds it

describe("whatSettlesFiled", () => {
  it("says of a filed check what would be said of it fresh, through JSON and back", () => {
    const fresh = whatSettles({ valueN: 16_900, ...terms, ...uncertaintyOf(budget) }, contributions, 3);
    expect(fresh?.moreClampings).toBeGreaterThan(0);
    expect(whatSettlesFiled(filed(16_900), 3)).toEqual(fresh);
  });

  it("has nothing to say of a check that was decided, or had no force", () => {
    expect(whatSettlesFiled(filed(18_500), 3)).toBeUndefined();
    expect(whatSettlesFiled(filed(null), 0)).toBeUndefined();
  });
});
