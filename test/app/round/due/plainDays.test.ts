import { describe, expect, it } from "vitest";
import { counterPace } from "../../../../app/round/due/counterPace.ts";
import { dateOf, daysOf } from "../../../../app/round/due/plainDays.ts";
import { plainCalendar } from "../../../../app/round/due/WorksCalendar.ts";
import { isOpen } from "../../../../app/round/due/workingDay.ts";

describe("plain dates", () => {
  // RFC 3339 section 5.7: February has 29 days in a leap year only; 2000 is one, 1900 is none.
  it.each(["2025-02-29", "1900-02-29", "2025-04-31", "2025-13-01", "2025-1-01", "x"])("refuses %s", (text) => {
    expect(() => daysOf(text)).toThrow(RangeError);
  });

  it("counts leap days", () => {
    expect(daysOf("2000-03-01") - daysOf("2000-02-28")).toBe(2);
    expect(dateOf(daysOf("2000-02-28") + 1)).toBe("2000-02-29");
  });

  // ISO 8601 week dates: 1 January 2005 is 2004-W53-6, a Saturday.
  it("knows weekdays as ISO 8601 counts them", () => {
    expect(isOpen("2005-01-01", { ...plainCalendar, weekdays: [6] })).toBe(true);
    expect(isOpen("1969-12-31", { ...plainCalendar, weekdays: [3] })).toBe(true);
  });
});

describe("counterPace", () => {
  it("is the median pace, whatever one miskeyed counter says", () => {
    const notes = [0, 1, 2, 3, 4, 5].map((k) => ({ day: 10 * k, counter: 1000 * k }));
    expect(counterPace(notes)).toBe(100);
    expect(counterPace(notes.map((n, i) => (i === 2 ? { ...n, counter: 200_000 } : n)))).toBe(100);
  });

  it("is unknown from one counter, or where it never rises", () => {
    expect(counterPace([{ day: 0, counter: 5 }])).toBeUndefined();
    expect(
      counterPace([
        { day: 0, counter: 5 },
        { day: 9, counter: 5 },
      ]),
    ).toBeUndefined();
  });
});
