import { describe, expect, it } from "vitest";
import { kendallCounts } from "../../../app/numerics/kendallCounts.ts";
import { kendallNull } from "../../../app/numerics/kendallNull.ts";
import { kendallVariance } from "../../../app/numerics/kendallVariance.ts";
import published from "../../published/trend-tests.json" with { type: "json" };

describe("kendallVariance", () => {
  // River, sediment and precipitation series: printed and recomputed variances (trend-tests.json).
  it.each(published.cases.filter((c) => "VarS" in c.expected.recomputed))("meets $name", ({ inputs, expected }) => {
    const x = inputs.times ?? inputs.values.map((_, i) => i);
    const want = expected.recomputed.VarS!;
    expect(Math.abs(kendallVariance(kendallCounts(x, inputs.values)) / want - 1)).toBeLessThan(1e-12);
  });

  // An identity: the variance is the second moment of the exact distribution, ties in x, in y and in both.
  it.each([
    [
      [1, 1, 1, 1, 1, 1],
      [1, 1, 1, 1, 1, 1],
    ],
    [
      [1, 1, 1, 1, 1],
      [2, 1, 2],
    ],
    [
      [2, 1, 2],
      [1, 3, 1],
    ],
    [
      [3, 2, 2],
      [2, 2, 1, 2],
    ],
    [
      [4, 4],
      [4, 4],
    ],
  ])("is the second moment of S for groups %j and %j", (groupsX, groupsY) => {
    const spread = (groups: readonly number[]) => groups.flatMap((size, g) => Array.from({ length: size }, () => g));
    let moment = 0;
    for (const [s, p] of kendallNull(groupsX, groupsY)) moment += s * s * p;
    const variance = kendallVariance(kendallCounts(spread(groupsX), spread(groupsY)));
    expect(Math.abs(variance - moment)).toBeLessThan(1e-9 * moment);
  });

  it("is 0 where nothing can vary", () => {
    expect(kendallVariance(kendallCounts([1, 2, 3], [4, 4, 4]))).toBe(0);
    expect(kendallVariance(kendallCounts([1], [4]))).toBe(0);
    expect(kendallVariance(kendallCounts([1, 1], [4, 5]))).toBe(0);
  });
});
