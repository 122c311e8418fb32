import { describe, expect, it } from "vitest";
import { groupTakes } from "../../../../app/round/take/groupTakes.ts";
import type { Take } from "../../../../app/round/take/Take.ts";

const take = (kN: number, atS: number | undefined, location?: string): Take => ({
  valueN: kN * 1_000,
  atMs: atS === undefined ? undefined : atS * 1_000,
  location,
  kind: undefined,
  refused: undefined,
});
const visits = (...takes: readonly Take[]) => groupTakes(takes, [...takes.keys()]).map((group) => group.takes);

describe("takes of one visit", () => {
  it("follow one another within 75 s, from take to take and not from the first", () => {
    expect(visits(take(18, 0), take(18, 75), take(18, 150))).toEqual([[0, 1, 2]]);
    expect(visits(take(18, 0), take(18, 75.001))).toEqual([[0], [1]]);
  });

  it("differ from the mean of those before by no more than 6 % of it", () => {
    expect(visits(take(10, 0), take(10.6, 20))).toEqual([[0, 1]]);
    expect(visits(take(10, 0), take(10.601, 20))).toEqual([[0], [1]]);
    expect(visits(take(10, 0), take(9.4, 20))).toEqual([[0, 1]]);
    expect(visits(take(10, 0), take(9.399, 20))).toEqual([[0], [1]]);
    // 10 and 10.6 have the mean 10.3: 10.9 lies within 6 % of that, not of the first.
    expect(visits(take(10, 0), take(10.6, 20), take(10.9, 40))).toEqual([[0, 1, 2]]);
  });

  it("are those of one location, however long between and however far apart; another location is another visit", () => {
    expect(visits(take(18, 0, "4"), take(12, 9_000, "4"), take(12, 9_010, "5"))).toEqual([[0, 1], [2]]);
    expect(visits(take(18, 0, "4"), take(18, 10))).toEqual([[0], [1]]);
  });

  it("are not told without location and time: two spindles that are alike would be one", () => {
    expect(visits(take(18, undefined), take(18, undefined))).toEqual([[0], [1]]);
    expect(visits(take(18, 0), take(18, undefined), take(18, 10))).toEqual([[0], [1], [2]]);
  });

  it("have the mean of their forces and the time of the first", () => {
    expect(groupTakes([take(18, 5), take(18.3, 30)], [0, 1])).toEqual([
      { takes: [0, 1], meanN: 18_150, atMs: 5_000, location: undefined },
    ]);
  });
});
