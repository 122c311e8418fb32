import { describe, expect, it } from "vitest";
import { datePattern, isPlainDate, readTypedDate, typedDate } from "../../../renderer/words/plainDates.ts";

/** The forms are the platform's own (Unicode CLDR through `Intl`). */
const locales = ["de", "de-AT", "de-CH", "en-GB", "en-US", "en-IE", "sv-SE"];

describe("a date that is typed", () => {
  it("comes back from its own form in every locale", () => {
    for (const locale of locales) {
      for (let day = 0; day < 800; day += 13) {
        const date = new Date(Date.UTC(2024, 0, 1 + day)).toISOString().slice(0, 10);
        expect([locale, readTypedDate(typedDate(date, locale), locale)]).toEqual([locale, date]);
      }
    }
  });

  it.each([
    ["de", "3.1.2026", "2026-01-03"],
    ["de", "03.01.26", "2026-01-03"],
    ["de", " 3-1-2026 ", "2026-01-03"],
    ["en-GB", "3/1/2026", "2026-01-03"],
    ["en-US", "3/1/2026", "2026-03-01"],
    ["en-US", "2026-01-03", "2026-01-03"],
    ["de", "20260103", "2026-01-03"],
    ["de", "29.02.2024", "2024-02-29"],
  ])("in %s, %j is %s", (locale, text, date) => {
    expect(readTypedDate(text, locale)).toBe(date);
  });

  it.each(["31.02.2026", "29.02.2025", "13.13.2026", "3.1.", "Januar 2026", "3.1.2026 12:00", "1.1.1826", ""])(
    "%j is no day",
    (text) => {
      expect(readTypedDate(text, "de")).toBeUndefined();
    },
  );

  it("is shown as it is typed, and what is no date as it stands", () => {
    expect(typedDate("2026-11-02", "de")).toBe("02.11.2026");
    expect(typedDate("2026-11-02", "en-US")).toBe("11/02/2026");
    expect(typedDate("31.02.2026", "de")).toBe("31.02.2026");
    expect(typedDate("2026-02-31", "de")).toBe("2026-02-31");
    expect(typedDate("", "de")).toBe("");
  });

  it("is a day only if the calendar has it, however it is written", () => {
    const texts = ["2026-02-28", "2024-02-29", "2026-02-29", "2026-02-31", "28.02.2026", ""];
    expect(texts.filter(isPlainDate)).toEqual(["2026-02-28", "2024-02-29"]);
  });

  it("has its pattern in the reader's letters", () => {
    expect(datePattern("de", "TMJ")).toBe("TT.MM.JJJJ");
    expect(datePattern("en-GB", "dmy")).toBe("dd/mm/yyyy");
    expect(datePattern("en-US", "dmy")).toBe("mm/dd/yyyy");
  });
});
