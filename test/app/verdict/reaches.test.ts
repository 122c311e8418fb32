import { describe, expect, it } from "vitest";
import { reaches } from "../../../app/verdict/reaches.ts";

describe("reaches", () => {
  it("takes rounding for equal and a ten-thousandth of a newton in a hundred kilonewtons for a difference", () => {
    expect(reaches(0.1 + 0.2, 0.3, 0.3)).toBe(true);
    expect(reaches(0.3, 0.1 + 0.2, 0.3)).toBe(true);
    expect(reaches(100_000 - 1e-4, 100_000, 100_000)).toBe(false);
  });

  it("does not take what is not a number for reached", () => {
    expect(reaches(NaN, 1, 1)).toBe(false);
  });
});
