import { expect, it } from "vitest";
import { trendInFile } from "../../../main/fleet/trendInFile.ts";
import { expected } from "../../../main/rounds/expected.ts";
import { readSpindle } from "../../../main/store/records/spindles.ts";
import { aCheck, idOf } from "../../support/aCheck.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { storeInTemp } from "../../support/storeInTemp.ts";

/** Five checks before a service on 10 January in Auckland (it begins on the 9th at 11:00 UTC), three after. */
function servedInAuckland() {
  const store = storeInTemp();
  const check = (seed: number, measuredAt: string, valueN: number, reason: "routine" | "beforeService") => ({
    kind: "check" as const,
    body: aCheck({ seed, cycleCount: 1, measuredAt, valueN, reason }),
  });
  store.append([
    {
      kind: "works",
      body: {
        worksId: idOf(77),
        name: "Larch works",
        timeZone: "Pacific/Auckland",
        rule: { rule: "guarded", coverageFactor: 2 },
        cautionDrop: 0.1,
        actDrop: 0.2,
        unitShown: "kN",
        intervalDays: 90,
      },
    },
    { kind: "spindle", body: aSpindle() },
    ...[1, 2, 3, 4].map((month) =>
      check(month, `2025-0${month}-10T08:00:00.000Z`, 20_000 + (month % 2) * 50, "routine"),
    ),
    check(5, "2026-01-09T12:00:00.000Z", 20_010, "beforeService"),
    {
      kind: "serviceEvent",
      body: { eventId: idOf(88), spindleId: idOf(1), at: "2026-01-10", kind: "springs", newBaseline: true },
    },
    check(6, "2026-01-09T15:00:00.000Z", 24_000, "routine"),
    check(7, "2026-02-09T15:00:00.000Z", 24_050, "routine"),
    check(8, "2026-03-09T15:00:00.000Z", 23_990, "routine"),
  ]);
  return store;
}

it("a service's day begins at the works' midnight: a check of that morning is after it, one before the work is not", () => {
  const { db } = servedInAuckland();
  const { trend, detailed } = trendInFile(db, readSpindle(db, idOf(1))!);
  expect(trend.points.map(({ segment }) => segment)).toEqual([0, 0, 0, 0, 0, 1, 1, 1]);
  expect(detailed.map(({ seriesCount }) => seriesCount)).toEqual(Array(8).fill(1));
});

it("what a round expects comes from the checks since that service alone", () => {
  const { db } = servedInAuckland();
  const next = expected(db, readSpindle(db, idOf(1))!)!;
  expect(next.forceN).toBeCloseTo(24_000, -2);
});
