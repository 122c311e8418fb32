import { describe, expect, it } from "vitest";
import { likeEntryOf } from "../../../app/trend/likeEntryOf.ts";
import { trendOf } from "../../../app/trend/trendOf.ts";
import { spindleHistory } from "../../support/spindleHistory.ts";

const spindle = { spindleId: "a", taper: "HSK-A63", nominalN: 20_000 };
const of = (values: readonly number[]) => trendOf(spindleHistory(values, { spindleId: "a", limits: {} }));

describe("likeEntryOf", () => {
  it("gives level and yearly change as shares of nominal: a line of 90 N every 90 days", () => {
    const entry = likeEntryOf(spindle, of(Array.from({ length: 9 }, (_, i) => 19_800 - 90 * i)))!;
    expect(entry.level).toBeCloseTo(19_080 / 20_000, 9);
    expect(entry.perYear).toBeCloseTo(-365.25 / 20_000, 9);
    expect(entry.group).toBe("HSK-A63 20000");
  });

  it("takes the last force where checks are too few for a line", () => {
    expect(likeEntryOf(spindle, of([19_000, 18_000]))).toMatchObject({ level: 0.9, perYear: undefined });
  });

  it("knows no like without taper, nominal force or check", () => {
    expect(likeEntryOf({ ...spindle, taper: "" }, of([19_000]))).toBeUndefined();
    expect(likeEntryOf({ ...spindle, nominalN: undefined }, of([19_000]))).toBeUndefined();
    expect(likeEntryOf(spindle, of([]))).toBeUndefined();
  });
});
