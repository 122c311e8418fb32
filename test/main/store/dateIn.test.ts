import { describe, expect, it } from "vitest";
import { dateIn, dayStart } from "../../../main/store/dateIn.ts";

const iso = (timeZone: string | undefined, date: string) => new Date(dayStart(timeZone, date)).toISOString();

/** Offsets and clock changes of the IANA time zone database, as the platform's Intl carries it. */
describe("a day in a time zone", () => {
  it("begins at the zone's midnight, east and west of Greenwich", () => {
    expect(iso("Asia/Kolkata", "2026-03-01")).toBe("2026-02-28T18:30:00.000Z");
    expect(iso("Pacific/Auckland", "2026-01-10")).toBe("2026-01-09T11:00:00.000Z");
    expect(iso("America/Los_Angeles", "2026-01-10")).toBe("2026-01-10T08:00:00.000Z");
  });

  it("begins by the clock that holds at its midnight, on the days the clocks change", () => {
    expect(iso("Europe/Berlin", "2026-03-29")).toBe("2026-03-28T23:00:00.000Z");
    expect(iso("Europe/Berlin", "2026-03-30")).toBe("2026-03-29T22:00:00.000Z");
    expect(iso("Europe/Berlin", "2026-10-25")).toBe("2026-10-24T22:00:00.000Z");
    expect(iso("Europe/Berlin", "2026-10-26")).toBe("2026-10-25T23:00:00.000Z");
  });

  it("begins an hour late where the clocks skip midnight", () => {
    expect(iso("America/Sao_Paulo", "2018-11-04")).toBe("2018-11-04T03:00:00.000Z");
  });

  it("is a day in UTC where no zone is known", () => {
    expect(iso(undefined, "2026-03-29")).toBe("2026-03-29T00:00:00.000Z");
    expect(iso("Nowhere/Atall", "2026-03-29")).toBe("2026-03-29T00:00:00.000Z");
    expect(dateIn("Nowhere/Atall", 0)).toBeUndefined();
  });

  it("holds the instants that have its date, to the millisecond", () => {
    for (const zone of ["Pacific/Apia", "America/St_Johns", "Asia/Kathmandu", "Europe/London"]) {
      const start = dayStart(zone, "2026-07-01");
      expect(dateIn(zone, start)).toBe("2026-07-01");
      expect(dateIn(zone, start - 1)).toBe("2026-06-30");
    }
  });
});
