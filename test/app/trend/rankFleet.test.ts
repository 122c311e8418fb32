import { describe, expect, it } from "vitest";
import { compareLike } from "../../../app/trend/compareLike.ts";
import { courseOf } from "../../../app/trend/courseOf.ts";
import { type FleetEntry, rankFleet } from "../../../app/trend/rankFleet.ts";
import { trendOf } from "../../../app/trend/trendOf.ts";
import { DAY_MS, FIRST_MS, rippled, spindleHistory } from "../../support/spindleHistory.ts";

const limits = { minimumN: 17_000, warningN: 18_000 };
const LAST_MS = FIRST_MS + 11 * 90 * DAY_MS;

function entry(spindleId: string, values: readonly number[], more: Partial<FleetEntry> = {}): FleetEntry {
  return {
    spindleId,
    trend: courseOf(spindleHistory(values, { spindleId, limits })),
    minimumN: limits.minimumN,
    verdict: values.length === 0 ? undefined : "good",
    stopped: false,
    nextRoundMs: LAST_MS + 90 * DAY_MS,
    ...more,
  };
}

const steady = entry(
  "steady",
  rippled(12, 60, () => 20_000),
);
const soon = entry(
  "soon",
  rippled(12, 60, () => 20_000).map((v, i) => v - 210 * i),
);
const later = entry(
  "later",
  rippled(12, 60, () => 21_000).map((v, i) => v - 110 * i),
);
const risky = entry(
  "risky",
  rippled(12, 60, (i) => 19_000 - 158 * i),
);
const below = entry(
  "below",
  rippled(12, 60, (i) => 19_000 - 200 * i),
);
const stopped = entry(
  "stopped",
  rippled(12, 60, () => 20_000),
  { stopped: true },
);
const never = entry("never", []);
const acted = entry(
  "acted",
  rippled(12, 60, () => 20_000),
  { verdict: "act" },
);
const few = entry("few", [20_000, 19_900]);

describe("rankFleet", () => {
  const places = rankFleet([steady, few, later, never, soon, acted, stopped, risky, below]);
  const why = new Map(places.map((p) => [p.spindleId, p.why.code]));

  it("puts first what must not cut, then what is likely to be below, then by expected date", () => {
    expect(places.map((p) => p.spindleId)).toEqual([
      "stopped",
      "below",
      "acted",
      "risky",
      "soon",
      "later",
      "never",
      "few",
      "steady",
    ]);
    expect(places.map((p) => p.rank)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });

  it("puts a spindle that is watched now before one that is still to reach its warning", () => {
    const warned = { minimumN: undefined, warningN: 18_000 };
    const fading = (spindleId: string, more: Partial<FleetEntry>) => {
      const values = rippled(12, 60, (i) => 21_000 - 110 * i);
      return entry(spindleId, values, {
        trend: courseOf(spindleHistory(values, { spindleId, limits: warned })),
        minimumN: undefined,
        ...more,
      });
    };
    const ranked = rankFleet([fading("a", {}), fading("b", { verdict: "watch" })]);
    expect(ranked.map(({ spindleId, why: { code } }) => [spindleId, code])).toEqual([
      ["b", "verdictWatch"],
      ["a", "reachesWarning"],
    ]);
  });

  it("says why", () => {
    expect(Object.fromEntries(why)).toMatchObject({
      stopped: "stopped",
      below: "belowMinimum",
      acted: "verdictAct",
      risky: "riskAtRound",
      never: "neverMeasured",
      few: "cannotTell",
      steady: "steady",
    });
  });

  it("gives the chance of being below the minimum at the next round, where it can be told", () => {
    const risk = (id: string) => places.find((p) => p.spindleId === id)!.risk;
    expect(risk("steady")!).toBeLessThan(1e-4);
    expect(risk("below")!).toBeGreaterThan(0.9);
    expect(risk("few")).toBeUndefined();
    expect(rankFleet([{ ...steady, nextRoundMs: undefined }])[0]!.risk).toBeUndefined();
  });

  it("takes the whole trend as well as the course, and does not depend on the order given", () => {
    const whole = [soon, later, steady].map((e, i) => ({
      ...e,
      trend:
        i === 1
          ? trendOf(
              spindleHistory(
                rippled(12, 60, () => 21_000).map((v, k) => v - 110 * k),
                { limits },
              ),
            )
          : e.trend,
    }));
    expect(rankFleet(whole)).toEqual(rankFleet([...whole].reverse()));
    expect(rankFleet([])).toEqual([]);
  });

  it("ranks equal ones by what is left over the minimum, then by id", () => {
    const flat = (id: string, level: number) =>
      entry(
        id,
        rippled(12, 60, () => level),
      );
    expect(rankFleet([flat("b", 21_000), flat("c", 20_000), flat("a", 21_000)]).map((p) => p.spindleId)).toEqual([
      "c",
      "a",
      "b",
    ]);
  });
});

describe("compareLike", () => {
  const like = [1, 0.99, 1.01, 1.02, 0.98, 0.8].map((level, i) => ({
    spindleId: `s${i}`,
    group: "a",
    level,
    perYear: i === 4 ? undefined : -0.01 - 0.001 * i,
  }));

  it("sets apart what lies far under its like, in robust standard deviations", () => {
    const got = compareLike(like);
    expect(got.filter((c) => c.standsOut).map((c) => c.spindleId)).toEqual(["s5"]);
    expect(got[0]).toMatchObject({ n: 6, medianLevel: 0.995 });
    expect(got[5]!.levelZ!).toBeCloseTo((0.8 - 0.995) / (1.4826022 * 0.015), 4);
    expect(got[4]!.perYearZ).toBeUndefined();
  });

  it("makes no group of three, and no distance where the like are all the same", () => {
    expect(compareLike(like.slice(0, 3))).toEqual([]);
    const same = like.slice(0, 4).map((e) => ({ ...e, level: 1, perYear: undefined }));
    expect(compareLike(same)[0]).toMatchObject({ levelZ: undefined, perYearZ: undefined, standsOut: false });
  });
});
