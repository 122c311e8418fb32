import { describe, expect, it } from "vitest";
import { parseDecimal, parseForce } from "../../../app/quantity/parseForce.ts";

describe("parseForce", () => {
  it.each([
    ["30 kN", 30_000],
    ["17,92 kN", 17_920],
    ["17,925 kN", 17_925],
    ["30kN", 30_000],
    ["-5 daN", -50],
    ["- 5 daN", -50],
    ["+0.5 kN", 500],
    ["1 234.5 N", 1234.5],
    ["1,234.5 N", 1234.5],
    ["1.234,5 N", 1234.5],
    ["1'234 N", 1234],
    ["1,234,567 N", 1_234_567],
    ["10 kip", 44_482.216152605],
    ["1e3 N", 1000],
  ])("reads %s as %d N", (text, forceN) => {
    const parsed = parseForce(text);
    expect(parsed).toMatchObject({ kind: "force", forceN });
  });

  it("says what is wrong with a torque, a mass and a word", () => {
    expect(parseForce("12 Nm")).toMatchObject({ kind: "torque", reason: expect.stringContaining("torque") });
    expect(parseForce("12 kg")).toMatchObject({ kind: "mass", unit: "kgf", reason: expect.stringContaining("kgf") });
    expect(parseForce("12 bananas")).toMatchObject({ kind: "unreadable", reason: expect.stringContaining("bananas") });
    expect(parseForce("12,5")).toEqual({ kind: "bare", value: 12.5 });
  });

  it.each(["", "kN", "NaN kN", "Infinity N", "0x10 N", "1.2.3 N", "1,2,3 N", "--5 N", "5- N", "1e999 N"])(
    "refuses %j",
    (text) => {
      expect(parseForce(text).kind).toBe("unreadable");
    },
  );
});

describe("parseDecimal", () => {
  it("reads a single comma with three digits as a decimal comma, as the shop floor writes it", () => {
    expect(parseDecimal("17,925")).toBe(17.925);
  });

  it.each(["0x10", "NaN", "1 2 3", "1,23,456", "1.234.56", "١٢"])("refuses %j", (text) => {
    expect(parseDecimal(text)).toBeUndefined();
  });
});
