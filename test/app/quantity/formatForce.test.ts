import { describe, expect, it } from "vitest";
import { forceDecimals, formatForce, formatForceFigure } from "../../../app/quantity/formatForce.ts";

describe("formatForce", () => {
  it.each([
    [17_924, "kN", 10, "17.92 kN"],
    [17_924, "kN", 100, "17.9 kN"],
    [17_924, "kN", 1, "17.924 kN"],
    [17_924, "N", 1, "17924 N"],
    [17_924, "daN", 5, "1792.4 daN"],
    [17_924, "daN", 10, "1792 daN"],
    [17_924, "lbf", 4.4482216152605, "4029 lbf"],
    [17_924, "lbf", 0.44482216152605, "4029.5 lbf"],
    [17_924, "kip", 4.4482216152605, "4.029 kip"],
  ] as const)("shows %d N in %s at a step of %d N as %s", (forceN, unit, step, text) => {
    expect(formatForce(forceN, unit, step)).toBe(text);
  });

  it("never shows a negative zero", () => {
    expect(formatForce(-3, "kN", 10)).toBe("0.00 kN");
    expect(formatForceFigure(-0, "N", 1)).toBe("0");
  });

  it("shows as many decimals as a step of 10 N needs when the gauge's step is not known", () => {
    expect(formatForce(17_924, "kN")).toBe("17.92 kN");
  });

  it("gives another unit's step enough digits to tell two steps apart", () => {
    // 10 N is 2.248 lbf: whole pounds show it, tens would not.
    expect(forceDecimals("lbf", 10)).toBe(0);
    expect(forceDecimals("kip", 10)).toBe(3);
  });

  it("refuses a resolution that is not above zero", () => {
    expect(() => forceDecimals("kN", 0)).toThrow(RangeError);
    expect(() => forceDecimals("kN", Number.NaN)).toThrow(RangeError);
  });
});
