import { describe, expect, it } from "vitest";
import { createSpeech } from "../../../app/words/Speech.ts";

const english = createSpeech("en", "en-GB", "Europe/Berlin");
const german = createSpeech("de", "de-DE", "Europe/Berlin");
const plain = (text: string) => text.replace(/[\u00a0]/g, " ");

describe("Speech", () => {
  it("writes a force with the reader's decimal mark and the gauge's decimals", () => {
    expect(plain(english.force(17_920, "kN", 10))).toBe("17.92 kN");
    expect(plain(german.force(17_920, "kN", 10))).toBe("17,92 kN");
    expect(plain(german.force(17_920, "N", 10))).toBe("17920 N");
  });

  it("writes no minus before a zero, and a true minus sign before a figure", () => {
    expect(english.number(-0.001, 2)).toBe("0.00");
    expect(english.number(-0.02, 2)).toBe("−0.02");
  });

  it("lets the uncertainty say how many decimals a value has", () => {
    expect(plain(english.forceWithin(17_924, 87, "kN"))).toBe("17.92 ± 0.09 kN");
    expect(plain(english.forceWithin(15_944, 171, "kN"))).toBe("15.94 ± 0.17 kN");
    expect(plain(english.forceWithin(15_944, 620, "kN"))).toBe("15.9 ± 0.6 kN");
    expect(plain(english.forceWithin(15_944, undefined, "kN"))).toBe("15.94 kN");
  });

  // The forms are the platform's own: the same object of Intl gives the expected text.
  it("writes dates as the platform does for the place", () => {
    const noon = Date.UTC(2026, 10, 12, 11, 0);
    const form = { day: "numeric", month: "short", year: "numeric", timeZone: "Europe/Berlin" } as const;
    expect(german.date(noon)).toBe(new Intl.DateTimeFormat("de-DE", form).format(noon));
    expect(english.date(noon)).toBe("12 Nov 2026");
  });

  it("keeps a plain date on its day whatever the time zone", () => {
    expect(createSpeech("en", "en-GB", "America/Los_Angeles").plainDate("2026-11-12")).toBe("12 Nov 2026");
  });
});
