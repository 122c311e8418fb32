import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { holdfast } from "./learnHoldfast.ts";

// NIST SP 811 (2008), appendix B.8 and B.9.
const published = JSON.parse(readFileSync(new URL("../../published/force-units.json", import.meta.url), "utf8"));

describe("holdfast convert", () => {
  it.each(published.cases as { value: number; from: string; to: string; result: number }[])(
    "says that $value $from is $result $to",
    async ({ value, from, to, result }) => {
      const { code, out } = await holdfast(["convert", String(value), from, "--to", to, "--json"]);
      expect(code).toBe(0);
      expect(Math.abs(JSON.parse(out).value / result - 1)).toBeLessThanOrEqual(1e-14);
    },
  );

  it.each(Object.entries<string>(published.newton_per_unit_exact))("says that 1 %s is %s N", async (name, exact) => {
    const { out } = await holdfast(["convert", "1", name, "--to", "N", "--json"]);
    expect(JSON.parse(out)).toEqual({ value: expect.any(Number), unit: "N" });
    expect(Math.abs(JSON.parse(out).value / Number(exact) - 1)).toBeLessThanOrEqual(1e-14);
  });

  it("prints for people", async () => {
    expect(await holdfast(["convert", "-5", "daN", "--to", "N"])).toEqual({
      code: 0,
      out: "-5 daN = -50 N\n",
      err: "",
    });
    expect((await holdfast(["convert", "17,92", "kN", "--to", "N"])).out).toBe("17,92 kN = 17920 N\n");
    expect((await holdfast(["convert", "--to", "N", "2500", "daN"])).out).toBe("2500 daN = 25000 N\n");
  });

  it.each([
    [["12", "Nm", "--to", "N"], "torque"],
    [["12", "kN", "--to", "ft-lb"], "torque"],
    [["12", "kg", "--to", "N"], "kgf"],
    [["12", "bar", "--to", "N"], "bar"],
    [["12", "kN"], "--to"],
    [["12", "--to", "N"], "UNIT"],
    [["kN", "--to", "N"], "VALUE"],
    [["0x12", "kN", "--to", "N"], "VALUE"],
    [["NaN", "kN", "--to", "N"], "VALUE"],
    [["1e999", "kN", "--to", "N"], "VALUE"],
    [["12", "kN", "--to", "N", "--loud"], "loud"],
  ])("refuses %j in one line that says why", async (args, why) => {
    const { code, out, err } = await holdfast(["convert", ...args]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain(why);
    expect(err.trimEnd().split("\n").length).toBe(1);
  });
});
