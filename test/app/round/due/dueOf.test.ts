import { describe, expect, it } from "vitest";
import type { DueFacts } from "../../../../app/round/due/DueFacts.ts";
import { dueList } from "../../../../app/round/due/dueList.ts";
import { dueOf } from "../../../../app/round/due/dueOf.ts";
import { plainCalendar } from "../../../../app/round/due/WorksCalendar.ts";

const everyDay = { weekdays: [1, 2, 3, 4, 5, 6, 7], closed: [] };
const last = { on: "2026-01-01", verdict: "good", counter: undefined, remeasure: false } as const;
const facts = (over: Partial<DueFacts> = {}): DueFacts => ({
  spindleId: "a",
  intervalDays: 90,
  intervalToolChanges: undefined,
  last,
  stopped: false,
  changesPerDay: undefined,
  counterSince: undefined,
  limitFrom: undefined,
  event: undefined,
  ...over,
});
const due = (over: Partial<DueFacts>, today = "2026-01-10") => dueOf(facts(over), everyDay, today);

describe("the next due day", () => {
  it("is the interval after the last check, 90 days past 1 January being 1 April", () => {
    expect(due({})).toMatchObject({ dueOn: "2026-04-01", why: "interval", also: [], overdueDays: -81 });
  });

  it("comes at half the interval for a watched spindle, and says both", () => {
    expect(due({ last: { ...last, verdict: "watch" } })).toMatchObject({ dueOn: "2026-02-15", why: "watch" });
  });

  it("comes within two weeks after act and within one after a check that could not tell", () => {
    expect(due({ last: { ...last, verdict: "act" } })).toMatchObject({ dueOn: "2026-01-15", why: "act" });
    expect(due({ last: { ...last, verdict: "cannotTell" } }).dueOn).toBe("2026-01-08");
  });

  it("is today for a spindle under stop or never measured", () => {
    expect(due({ stopped: true })).toMatchObject({ dueOn: "2026-01-10", why: "stopped" });
    expect(due({ last: undefined })).toMatchObject({ dueOn: "2026-01-10", why: "neverMeasured" });
  });

  it("is the day of a crash or service that no check tells of yet", () => {
    expect(due({ event: { on: "2026-01-05", kind: "crash" } })).toMatchObject({ why: "afterCrash", overdueDays: 5 });
    expect(due({ event: { on: "2026-01-05", kind: "service" } }).why).toBe("afterService");
  });

  it("stands at two thirds of the way to the earliest day a limit may be reached", () => {
    expect(due({ limitFrom: "2026-01-31" })).toMatchObject({ dueOn: "2026-01-21", why: "forecast" });
    expect(due({ limitFrom: "2027-01-31" }).why).toBe("interval");
  });

  it("follows the tool changes where counter and pace are known", () => {
    const counted = { last: { ...last, counter: 10_000 }, intervalToolChanges: 3_000, changesPerDay: 100 };
    expect(due(counted)).toMatchObject({ dueOn: "2026-01-31", why: "toolChanges" });
    expect(due({ ...counted, counterSince: { on: "2026-01-09", counter: 13_100 } })).toMatchObject({
      dueOn: "2026-01-09",
      overdueDays: 1,
    });
    expect(due({ ...counted, changesPerDay: undefined }).why).toBe("interval");
  });

  it("is not put off by a counter that began anew: what it shows since has been made at the least", () => {
    const counted = { last: { ...last, counter: 100_000 }, intervalToolChanges: 3_000, changesPerDay: 100 };
    const renewed = (counter: number) => due({ ...counted, counterSince: { on: "2026-01-09", counter } });
    expect(renewed(50)).toMatchObject({ dueOn: "2026-01-31", why: "toolChanges" }); // by the pace since 1 January
    expect(renewed(2_000)).toMatchObject({ dueOn: "2026-01-19", why: "toolChanges" }); // 1,000 left from the 9th on
    expect(renewed(3_100)).toMatchObject({ dueOn: "2026-01-09", overdueDays: 1 });
    expect(due({ ...counted, changesPerDay: undefined, counterSince: { on: "2026-01-09", counter: 50 } }).why).toBe(
      "interval",
    );
  });

  it("moves from a weekend to the Friday before, and over a shutdown to the day before it", () => {
    const on = (date: string, closed: { from: string; to: string }[] = []) =>
      dueOf(facts({ intervalDays: 1, last: { ...last, on: date } }), { ...plainCalendar, closed }, "2026-01-02").dueOn;
    expect(on("2026-01-09")).toBe("2026-01-09"); // due Saturday the 10th
    expect(on("2026-01-14", [{ from: "2026-01-12", to: "2026-01-16" }])).toBe("2026-01-09");
  });

  it("never moves to a day that is past: a closed day with none open before it goes to the first open one after", () => {
    expect(dueOf(facts({ stopped: true }), plainCalendar, "2026-01-10").dueOn).toBe("2026-01-12");
  });

  it("keeps its day once it is overdue", () => {
    expect(due({}, "2026-05-01")).toMatchObject({ dueOn: "2026-04-01", overdueDays: 30 });
  });

  it("refuses a day that is in no calendar", () => {
    expect(() => due({ last: { ...last, on: "2026-02-31" } })).toThrow(RangeError);
  });
});

describe("the due list", () => {
  it("has overdue spindles first, and of one day the one that presses more", () => {
    const list = dueList(
      [
        facts({ spindleId: "later" }),
        facts({ spindleId: "never", last: undefined }),
        facts({ spindleId: "stopped", stopped: true }),
        facts({ spindleId: "overdue", last: { ...last, on: "2025-09-01" } }),
      ],
      everyDay,
      "2026-01-10",
    );
    expect(list.map((i) => i.spindleId)).toEqual(["overdue", "stopped", "never", "later"]);
  });
});
