import { describe, expect, it } from "vitest";
import { parseDate, parseStamp, parseTime } from "../../../../app/round/dump/parseStamp.ts";

const iso = (ms: number | undefined) => (ms === undefined ? undefined : new Date(ms).toISOString());

describe("dates and times as gauges write them", () => {
  // The example of RFC 3339 section 5.8, 1996-12-19T16:39:57, and the same day in other orders.
  it.each([
    ["1996-12-19", "ymd"],
    ["19.12.1996", "dmy"],
    ["12/19/1996", "mdy"],
    ["19961219", "ymd"],
  ] as const)("reads %s", (text, order) => {
    expect(iso(parseDate(text, order))).toBe("1996-12-19T00:00:00.000Z");
  });

  it("reads a stamp with T or blanks between", () => {
    expect(iso(parseStamp("1996-12-19T16:39:57", "ymd"))).toBe("1996-12-19T16:39:57.000Z");
    expect(iso(parseStamp("19.12.1996, 4:39 PM", "dmy"))).toBe("1996-12-19T16:39:00.000Z");
  });

  it("puts two digits of a year in this century", () => {
    expect(iso(parseDate("02.03.26", "dmy"))).toBe("2026-03-02T00:00:00.000Z");
  });

  it.each(["31.02.2026", "29.02.2025", "00.01.2026", "01.13.2026", "1.1", "x"])("finds no day in %s", (text) => {
    expect(parseDate(text, "dmy")).toBeUndefined();
  });

  it.each([
    ["24:00", 86_400_000],
    ["12:00 AM", 0],
    ["12:30 pm", 45_000_000],
    ["8:05:30.5", 29_130_500],
  ])("reads the time %s", (text, ms) => {
    expect(parseTime(text)).toBe(ms);
  });

  it.each(["24:01", "25:00", "8:60", "8:05:61", "13:00 PM", "0:30 AM", "8"])("finds no time in %s", (text) => {
    expect(parseTime(text)).toBeUndefined();
  });
});
