import { describe, expect, it } from "vitest";
import { addDays, daysBetween } from "../../../../app/proof/data/plainDate.ts";

describe("plain dates", () => {
  it("count days over a leap day and over the end of summer time", () => {
    expect(daysBetween("2028-02-28", "2028-03-01")).toBe(2);
    expect(daysBetween("2026-10-24", "2026-10-26")).toBe(2);
    expect(daysBetween("2026-03-01", "2026-02-28")).toBe(-1);
  });

  it("come back from adding and taking away", () => {
    expect(addDays("2026-12-31", 1)).toBe("2027-01-01");
    expect(addDays(addDays("2026-05-17", 365), -365)).toBe("2026-05-17");
  });

  it.each(["2025-02-30", "2026-13-01", "26-01-01", "31.12.2026", "tomorrow", ""])("refuse %j", (text) => {
    expect(() => addDays(text, 1)).toThrow(/is no date/);
  });
});
