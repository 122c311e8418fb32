import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import isoTable from "../../../app/proof/tables/iso376.json" with { type: "json" };
import e74 from "../../published/astm-e74-lower-limit.json" with { type: "json" };
import iso from "../../published/iso376-classes.json" with { type: "json" };
import pontius from "../../published/nist-strd-pontius.json" with { type: "json" };
import wampler1 from "../../published/nist-strd-wampler1.json" with { type: "json" };
import wampler4 from "../../published/nist-strd-wampler4.json" with { type: "json" };
import { iso376Example } from "../../support/iso376Example.ts";
import { csvOf, csvOfPairs, runProve } from "../../support/runProve.ts";

const digits = (got: readonly number[], certified: readonly number[]) =>
  Math.min(...got.map((v, i) => Math.min(15, -Math.log10(Math.abs(v / certified[i]! - 1)))));

describe("holdfast prove", () => {
  // NIST StRD, certified values. Digits asked for: 9 on Pontius, 7 on Wampler4.
  it.each([
    ["Pontius", pontius, "2"],
    ["Wampler4", wampler4, "5"],
  ])("keeps twelve digits of NIST %s from the file to the JSON", async (_, { inputs, expected }, degree) => {
    const got = (
      await runProve(csvOfPairs(inputs.x, inputs.y), "-", "--method", "polynomial", "--degree", degree, "--json")
    ).json();
    expect(digits(got.coefficients, expected.coefficients)).toBeGreaterThan(12);
    expect(digits(got.coefficientSd, expected.coefficient_sd)).toBeGreaterThan(12);
    expect(digits([got.residualSd, got.rSquared], [expected.residual_sd, expected.r_squared])).toBeGreaterThan(12);
    expect(got).toMatchObject({ degree: Number(degree), class: null, lowerLimitFactor: null, zero: null, creep: null });
  });

  it("leaves nothing of an exact polynomial (NIST Wampler1)", async () => {
    const got = (
      await runProve(
        csvOfPairs(wampler1.inputs.x, wampler1.inputs.y),
        "-",
        "--method",
        "polynomial",
        "--degree",
        "5",
        "--json",
      )
    ).json();
    expect(got.coefficients).toEqual(wampler1.expected.coefficients);
    expect(got.residualSd).toBeLessThan(1e-20);
    expect(Math.max(...got.steps.map((s: { residual: number }) => Math.abs(s.residual)))).toBeLessThan(1e-20);
  });

  // ISO 376:2011 from memory, constructed readings.
  it("classes the worked example of ISO 376", async () => {
    const { expected } = iso.worked_example;
    const got = (await runProve(csvOf(iso376Example()), "-", "--method", "iso376", "--json")).json();
    expect(got).toMatchObject({
      class: "0.5",
      classReason: null,
      degree: 3,
      constant: false,
      units: { reference: "kN", indication: null },
    });
    expect(got.steps.map((s: { class: string }) => s.class)).toEqual(expected.class_by_step);
    expect(got.steps[0].b).toBeCloseTo(expected.b[0]!, 8);
    expect(got.zero).toBeCloseTo(expected.f0, 8);
    expect(got.creep).toBeCloseTo(expected.c, 8);
    expect(got.remarks.map((r: { code: string }) => r.code)).toContain("tableFromMemory");
    expect(got.uncertainty.steps).toHaveLength(5);
  });

  it("gives no class to one run, says why, and shows the curve", async () => {
    const csv = csvOf(iso376Example().filter((r) => r.run === "1"));
    const got = (await runProve(csv, "-", "--method", "iso376", "--json")).json();
    expect(got.class).toBeNull();
    expect(got.classReason).toMatch(/three mounting positions.*two rising series/);
    expect(got.coefficients).toHaveLength(4);
  });

  // ASTM E74-18, partly from memory, on NIST Pontius.
  it("finds degree, lower limit factor and class by E74", async () => {
    const csv = csvOfPairs(pontius.inputs.x, pontius.inputs.y);
    const got = (await runProve(csv, "-", "--method", "astm-e74", "--json")).json();
    expect(got).toMatchObject({ degree: 2, class: "AA" });
    expect(Math.abs(got.lowerLimitFactor / e74.worked_example.expected.LLF - 1)).toBeLessThan(1e-7);
  });

  const working = "reference_kN,indication_lbf,run\n10,2248,1\n20,4497,1\n10,2249,2\n20,4496,2\n";
  it("takes a working gauge's unit to the reference's before it compares", async () => {
    const got = (
      await runProve(working, "-", "--method", "working", "--mpe", "0.5 %", "--rule", "iso14253", "--json")
    ).json();
    expect(got).toMatchObject({ conformity: "conforming", class: null, units: { reference: "kN", indication: "kN" } });
    expect(got.steps[0].net).toBeCloseTo(2248.5 * 0.0044482216152605, 12);
  });

  it.each([
    ["0.5 %", [0.05, 0.1]],
    ["1 % FS", [0.2, 0.2]],
    ["200 N", [0.2, 0.2]],
  ])("knows a permissible error of %s", async (mpe, permissible) => {
    const got = (await runProve(working, "-", "--method", "working", "--mpe", mpe, "--json")).json();
    expect(got.steps.map((s: { permissible: number }) => s.permissible)).toEqual(
      permissible.map((p) => expect.closeTo(p, 12)),
    );
  });

  it("reads semicolons, decimal commas and a byte-order mark", async () => {
    const csv = "\uFEFFReference_kN;Indication_kN\r\n10;10,02\r\n20;20,05\r\n30;30,04\r\n";
    const got = (await runProve(csv, "-", "--method", "polynomial", "--degree", "1", "--json")).json();
    expect(got.steps.map((s: { net: number }) => s.net)).toEqual([10.02, 20.05, 30.04]);
  });

  it("carries resolution, reference and temperature into the budget", async () => {
    const args = [
      "--resolution",
      "0.5",
      "--reference-uncertainty",
      "0.02 %",
      "--temperature-coefficient",
      "0.01 %",
      "--temperature-range",
      "2 K",
    ];
    const got = (
      await runProve(
        csvOfPairs([10, 20, 30, 40], [10, 20, 30, 40]),
        "-",
        "--method",
        "polynomial",
        "--degree",
        "1",
        "--json",
        ...args,
      )
    ).json();
    const lines = got.uncertainty.steps[3].contributions;
    expect(lines).toContainEqual({ source: "reference", standard: expect.closeTo(0.004, 12), degreesOfFreedom: null });
    expect(lines).toContainEqual({
      source: "resolution",
      standard: expect.closeTo(0.5 / Math.sqrt(12), 12),
      degreesOfFreedom: null,
    });
    expect(lines).toContainEqual({
      source: "temperature",
      standard: expect.closeTo((40 * 1e-4) / Math.sqrt(3), 12),
      degreesOfFreedom: null,
    });
  });

  it("classes by a table the laboratory has corrected", async () => {
    const folder = mkdtempSync(join(tmpdir(), "prove-"));
    const table = join(folder, "iso376.json");
    try {
      const narrow = isoTable.classes.map((c) => (c.class === "0.5" ? { ...c, b: 0.08 } : c));
      writeFileSync(table, JSON.stringify({ ...isoTable, fromMemory: false, classes: narrow }));
      const got = (
        await runProve(csvOf(iso376Example()), "-", "--method", "iso376", "--table", table, "--json")
      ).json();
      expect(got.class).toBe("1");
      expect(got.remarks.map((r: { code: string }) => r.code)).not.toContain("tableFromMemory");
      writeFileSync(table, JSON.stringify({ ...isoTable, classes: [] }));
      const bad = await runProve(csvOf(iso376Example()), "-", "--method", "iso376", "--table", table);
      expect(bad).toMatchObject({ code: 2, err: expect.stringMatching(/at least one class/) });
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it("prints figures, class and notes for people", async () => {
    const { out, code } = await runProve(csvOf(iso376Example()), "-", "--method", "iso376");
    expect(code).toBe(0);
    expect(out).toMatch(/^class 0\.5$/m);
    expect(out).toMatch(/limits from memory: check against your edition of the standard/);
    expect(out).not.toMatch(/undefined|NaN|null/);
  });
});

describe("holdfast prove refuses, exit 2, one line,", () => {
  const good = "reference,indication\n1,1\n2,2\n3,3\n4,4.1\n";
  const poly = ["--method", "polynomial"];
  it.each([
    ["a torque as the reference's unit", "reference_Nm,indication\n1,1\n", poly, /reference_Nm.*torque/],
    ["a torque as the indication's unit", "reference_kN,indication_ft-lb\n1,1\n", poly, /indication_ft-lb.*torque/],
    ["a mass", "reference_kg,indication\n1,1\n", poly, /kg is a mass; write reference_kgf/],
    [
      "an unknown column",
      "reference,indication,colour\n1,1,red\n",
      poly,
      /column "colour" is not known; the columns are reference/,
    ],
    ["a missing column", "reference,run\n1,1\n", poly, /column "indication" is missing/],
    [
      "two columns of a kind",
      "reference,indication_N,indication_kN\n1,1,1\n",
      poly,
      /two columns are named indication/,
    ],
    ["a unit where none belongs", "reference,indication,run_kN\n1,1,1\n", poly, /"run_kN" has no unit/],
    [
      "a cell that is no number",
      "reference,indication\n1,1\n2,2\n3,abc\n",
      poly,
      /row 4, column indication: "abc" is not a number/,
    ],
    ["an infinity", "reference,indication\n1,Infinity\n", poly, /row 2, column indication: "Infinity"/],
    ["an empty indication", "reference,indication,run\n1,,1\n", poly, /row 2, column indication: is empty/],
    ["a load left out", "reference,indication,direction\n,1,up\n", poly, /row 2, column reference: is empty/],
    [
      "an unknown direction",
      "reference,indication,direction\n1,1,sideways\n",
      poly,
      /row 2, column direction: "sideways" is none of up, down/,
    ],
    ["a position that is no angle", "reference,indication,position\n1,1,north\n", poly, /row 2, column position/],
    ["an empty file", "", poly, /is empty/],
    ["a head without rows", "reference,indication\n", poly, /no rows/],
    [
      "a degree the loads do not carry",
      good,
      [...poly, "--degree", "7"],
      /degree 7 needs at least 8 different loads, the readings have 4/,
    ],
    ["a degree with no reading over", good, [...poly, "--degree", "3"], /none is left over/],
    ["a degree that is none", good, [...poly, "--degree", "2.5"], /--degree 2\.5: is a whole number/],
    [
      "a degree ISO 376 does not know",
      csvOf(iso376Example()),
      ["--method", "iso376", "--degree", "4"],
      /degree 1, 2 and 3/,
    ],
    ["no method", good, [], /--method is one of polynomial, iso376, astm-e74, working/],
    ["an unknown method", good, ["--method", "guess"], /got guess/],
    ["a rule without its limit", good, ["--method", "working", "--rule", "simple"], /--rule needs --mpe/],
    ["an unknown rule", good, ["--method", "working", "--mpe", "1 %", "--rule", "kind"], /--rule is one of/],
    ["a permissible error of zero", good, ["--method", "working", "--mpe", "0 %"], /above zero/],
    ["a permissible error without a unit", good, ["--method", "working", "--mpe", "0.5"], /neither a percentage/],
    ["a permissible error in a torque", good, ["--method", "working", "--mpe", "1 Nm"], /torque/],
    ["a permissible error for another method", good, [...poly, "--mpe", "1 %"], /--mpe belongs to the method working/],
    [
      "gauge and reference that cannot be compared",
      "reference_kN,indication_mV/V\n1,1\n",
      ["--method", "working"],
      /cannot be compared/,
    ],
    ["a resolution in percent", good, [...poly, "--resolution", "1 %"], /not a percentage/],
    ["a temperature without its range", good, [...poly, "--temperature-coefficient", "0.01 %"], /stand together/],
    ["an unknown option", good, [...poly, "--speed", "9"], /see holdfast help/],
  ])("%s", async (_, csv, args, words) => {
    const got = await runProve(csv, "-", ...args);
    expect(got.err).toMatch(words);
    expect(got).toMatchObject({ code: 2, out: "" });
    expect(got.err.trimEnd().split("\n")).toHaveLength(1);
  });

  it("a file that is not there, and two files at once", async () => {
    expect(await runProve("", "/no/such/file.csv", "--method", "polynomial")).toMatchObject({
      code: 2,
      err: expect.stringMatching(/cannot be read/),
    });
    expect(await runProve("", "-", "-", "--method", "polynomial")).toMatchObject({
      code: 2,
      err: expect.stringMatching(/one FILE/),
    });
  });
});
