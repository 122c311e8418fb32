import { describe, expect, it } from "vitest";
import { sampleStdDev } from "../../../../app/numerics/sampleStdDev.ts";
import { BASELINE_CHECKS, watchLevel } from "../../../../app/trend/step/watchLevel.ts";

const baseline = Object.freeze([18_000, 18_180, 17_820, 18_090, 17_910, 18_150, 17_850, 18_000]);
const s = sampleStdDev(baseline);
const watch = (...rest: number[]) => watchLevel(Float64Array.of(...baseline, ...rest));

describe("watchLevel", () => {
  // The sums by hand: k = 2 and h = 4 in standard deviations of the baseline, as its docstring says.
  it("alarms when what lies beyond two standard deviations adds up to four", () => {
    expect(watch(18_000 - 5.9 * s)!.alarm).toBeUndefined();
    expect(watch(18_000 - 6.1 * s)!.alarm).toEqual({ at: 8, since: 8, direction: "down" });
    expect(watch(18_000, 18_000 + 4.1 * s, 18_000 + 4.1 * s)!.alarm).toEqual({ at: 10, since: 9, direction: "up" });
  });

  it("forgets what was made good again", () => {
    expect(watch(18_000 - 5 * s, 18_000 + 3 * s, 18_000 - 5 * s)!.alarm).toBeUndefined();
  });

  it("has nothing to say without a further check, or of a baseline without scatter", () => {
    expect(watch()).toBeUndefined();
    expect(watchLevel(new Float64Array(BASELINE_CHECKS + 3).fill(5))).toBeUndefined();
  });
});
