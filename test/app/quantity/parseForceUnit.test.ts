import { describe, expect, it } from "vitest";
import { forceUnits } from "../../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../../app/quantity/parseForceUnit.ts";

const kinds = (names: string) => names.split("|").map((name) => [name] as const);

describe("parseForceUnit", () => {
  it("reads every unit by its own name", () => {
    for (const unit of forceUnits) expect(parseForceUnit(unit)).toEqual({ kind: "force", unit });
  });

  it.each([
    ["KN", "kN"],
    ["kn", "kN"],
    ["DAN", "daN"],
    [" N ", "N"],
    ["LBF", "lbf"],
    ["lb-f", "lbf"],
    ["kp", "kgf"],
    ["kips", "kip"],
    ["klbf", "kip"],
    ["pound-force", "lbf"],
    ["newtons", "N"],
  ] as const)("reads %s as %s", (text, unit) => {
    expect(parseForceUnit(text)).toEqual({ kind: "force", unit });
  });

  it("keeps milli and mega apart, and says nothing where the case does not tell", () => {
    expect(parseForceUnit("mN")).toEqual({ kind: "force", unit: "mN" });
    expect(parseForceUnit("MN")).toEqual({ kind: "force", unit: "MN" });
    expect(parseForceUnit("Mn")).toEqual({ kind: "unknown" });
    expect(parseForceUnit("mn")).toEqual({ kind: "unknown" });
  });

  it.each([
    ["kg", "kgf"],
    ["kilos", "kgf"],
    ["lb", "lbf"],
    ["lbs", "lbf"],
    ["pounds", "lbf"],
    ["g", "gf"],
    ["oz", "ozf"],
    ["t", "tf"],
  ] as const)("calls %s a mass and names the force people mean", (text, unit) => {
    expect(parseForceUnit(text)).toEqual({ kind: "mass", unit });
  });

  it.each(
    kinds(
      "Nm|N.m|N m|N-m|N·m|N⋅m|N*m|NM|kNm|mNm|Ncm|cNm|dNm|ft-lb|ft lb|ft.lb|ftlb|ft-lbs|FT-LB|lb-ft|lbf-ft|lbf ft|in-lb|in lb|inlb|in-lbf|" +
        "ozf.in|oz-in|kgf.cm|kgf m|kgf-m|kg-m|kgm|kp m|foot-pounds|foot pounds|pound feet|newton metres|newton-meters|inch pounds|m·N|kilonewton metres",
    ),
  )("refuses %s by name as a torque", (text) => {
    const meaning = parseForceUnit(text);
    expect(meaning.kind).toBe("torque");
    if (meaning.kind === "torque") expect(meaning.reason).toContain(text);
  });

  it.each(kinds("bar|psi|MPa|mm|V|mV/V|%|N/mm|N/m|kN/m2|C|ton|tons|tonf|gm|x|"))("knows no force in %j", (text) => {
    expect(parseForceUnit(text)).toEqual({ kind: "unknown" });
  });

  it("answers at once to absurd lengths", () => {
    expect(parseForceUnit("N ".repeat(100_000))).toEqual({ kind: "unknown" });
  });
});
