import { describe, expect, it } from "vitest";
import { dateOrderOf } from "../../../main/import/dateOrderOf.ts";
import { readDay, readTime } from "../../../main/import/readDay.ts";

const day = (date: string, timeS?: number) => ({ date, timeS });

describe("a day as people write it", () => {
  it.each([
    ["2026-04-03", "2026-04-03", undefined],
    ["2026/4/3", "2026-04-03", undefined],
    ["2026-04-03T14:30:05", "2026-04-03", 52_205],
    ["2026-04-03 14:30", "2026-04-03", 52_200],
    ["3.4.2026", "2026-04-03", undefined],
    ["03.04.26", "2026-04-03", undefined],
    ["3.4.98", "1998-04-03", undefined],
    ["3.4.2026, 7:05", "2026-04-03", 25_500],
    ["25/12/2019", "2019-12-25", undefined],
    ["12/25/2019", "2019-12-25", undefined],
    ["7/7/2019", "2019-07-07", undefined],
    ["29.02.2024", "2024-02-29", undefined],
  ])("%s is read", (text, date, timeS) => {
    expect(readDay(text, undefined)).toEqual(day(date, timeS));
  });

  it("is read with slashes in the order that was said, and left open without", () => {
    expect(readDay("03/04/2026", "dayFirst")).toEqual(day("2026-04-03"));
    expect(readDay("03/04/2026", "monthFirst")).toEqual(day("2026-03-04"));
    expect(readDay("03/04/2026 2:30 PM", "monthFirst")).toEqual(day("2026-03-04", 52_200));
    expect(readDay("03-04-26", undefined)).toBe("undecided");
  });

  it.each([
    "",
    "spring",
    "30.02.2024",
    "29.02.2023",
    "13/13/2020",
    "2026-13-01",
    "3.4",
    "45356",
    "3/4.2026",
    "2026-04-03 25:00",
  ])("%j is none", (text) => {
    expect(readDay(text, "dayFirst")).toBeUndefined();
  });

  it("is a bare day number in a workbook alone", () => {
    expect(readDay("45356", undefined, false)).toEqual(day("2024-03-05"));
    expect(readDay("43894", undefined, true)).toEqual(day("2024-03-05"));
    expect(readDay("45356.75", undefined, false)).toEqual(day("2024-03-05", 64_800));
    expect(readDay("453", undefined, false)).toBeUndefined();
  });

  it.each([
    ["14:30", 52_200],
    ["14.30 Uhr", 52_200],
    ["12:00 AM", 0],
    ["12:05 pm", 43_500],
    ["00:00:01", 1],
    ["24:00", undefined],
    ["13:00 PM", undefined],
    ["9", undefined],
  ])("a time of day: %s", (text, seconds) => {
    expect(readTime(text)).toBe(seconds);
  });
});

describe("the order of day and month in a column", () => {
  const told = (...texts: string[]) => dateOrderOf(texts.map((text, i) => ({ row: i + 2, text })));

  it("is told by one day over 12", () => {
    expect(told("03/04/2026", "13/04/2026")).toMatchObject({ order: "dayFirst", mixed: undefined });
    expect(told("03/04/2026", "04/13/2026 10:00")).toMatchObject({ order: "monthFirst", mixed: undefined });
  });

  it("is left open by days that fit both ways, and by none that are written otherwise", () => {
    expect(told("2026-01-01", "03/04/2026")).toMatchObject({ order: undefined, open: { row: 3, text: "03/04/2026" } });
    expect(told("2026-01-01", "3.4.2026")).toMatchObject({ order: undefined, open: undefined });
  });

  it("is refused where two rows tell different ones", () => {
    expect(told("13/04/2026", "04/13/2026")).toMatchObject({ order: undefined, mixed: { row: 3, other: 2 } });
  });
});
