import { describe, expect, it } from "vitest";
import { parseIsoInstant } from "../../../main/cli/parseIsoInstant.ts";

describe("parseIsoInstant", () => {
  // Date.parse of the language reads these forms too; the offsets are ISO 8601's.
  it.each([
    "2031-04-30",
    "2031-04-30T06:15:00Z",
    "2031-04-30T06:15:00.250Z",
    "2031-04-30T06:15:00+02:00",
    "2031-12-31T23:59:59Z",
  ])("reads %s", (text) => {
    expect(parseIsoInstant(text)).toBe(Date.parse(text));
  });

  it("takes a time without an offset as UTC, blanks and short offsets too", () => {
    expect(parseIsoInstant("2031-04-30 06:15")).toBe(Date.UTC(2031, 3, 30, 6, 15));
    expect(parseIsoInstant(" 2031-04-30T06:15-0330 ")).toBe(Date.UTC(2031, 3, 30, 9, 45));
  });

  it.each(["", "17.9", "30/04/2031", "2031-02-29", "2031-04-31", "2031-13-01", "2031-04-30T25:00", "20310430"])(
    "does not read %j",
    (text) => {
      expect(parseIsoInstant(text)).toBeUndefined();
    },
  );
});
