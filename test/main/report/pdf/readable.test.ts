import { describe, expect, it } from "vitest";
import { readable } from "../../../../main/report/pdf/readable.ts";

const ascii = (code: number) => code >= 0x20 && code < 0x7f;

describe("a text for a typeface that lacks characters", () => {
  // ISO 2955:1983, SI units where characters are few: u for micro, Ohm for ohm.
  it("writes units as the standard for few characters does", () => {
    expect(readable("5 µm, 3 Ω", ascii)).toBe("5 um, 3 Ohm");
  });
  it("writes signs in other characters", () => {
    expect(readable("a ≥ b ≤ c → √2, Δ", ascii)).toBe("a >= b <= c -> sqrt 2, Delta ");
  });
  it("names what it cannot write, and leaves nothing out", () => {
    expect(readable("中a\u0007", ascii)).toBe("[U+4E2D]a ");
  });
  it("leaves alone what the typeface has", () => {
    expect(readable("≥ plain", () => true)).toBe("≥ plain");
  });
});
