import { cpSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import { validationReport } from "../../../main/report/validationReport.ts";
import { programHash } from "../../../main/validate/programHash.ts";
import { passes } from "../../../main/validate/Trial.ts";
import { notRun, validate } from "../../../main/validate/validate.ts";
import { captureIo } from "../../support/captureIo.ts";
import { pdfText } from "../../support/pdfText.ts";
import { tempFolder } from "../../support/storeInTemp.ts";

const nowMs = Date.UTC(2024, 2, 4);

function copied(): string {
  const folder = join(tempFolder(), "published");
  cpSync("test/published", folder, { recursive: true });
  return folder;
}

describe("validation of an installation", () => {
  it("runs hundreds of published cases, each with its source, and all pass", () => {
    const { cases, failed } = validate({ nowMs });
    expect(failed).toEqual([]);
    expect(cases.length).toBeGreaterThan(300);
    for (const one of cases) expect(one.source, one.id).not.toBe("");
    expect(new Set(cases.map((one) => one.id)).size).toBe(cases.length);
    const classes = cases.find((one) => one.id.startsWith("iso376-classes/"));
    expect(classes?.source).toContain("from memory"); // what was not found in print is not passed off as print
  });

  it("fails where a published value is another one than the program's", () => {
    const folder = copied();
    const file = join(folder, "nist-strd-pontius.json");
    const data = JSON.parse(readFileSync(file, "utf8"));
    data.expected.residual_sd *= 1 + 1e-9;
    writeFileSync(file, JSON.stringify(data));
    const { failed } = validate({ folder, nowMs });
    expect(failed).toHaveLength(1);
    expect(failed[0]).toMatch(/^nist-strd-pontius\//);
  });

  it("counts a file that is missing or cannot be read as failed, not as left out", () => {
    const folder = copied();
    rmSync(join(folder, "checksums.json"));
    writeFileSync(join(folder, "force-units.json"), "{}");
    writeFileSync(join(folder, "trend-tests.json"), '{"cases":[]}');
    expect(validate({ folder, nowMs }).failed).toEqual(["checksums/1", "force-units/1", "trend-tests/1"]);
  });

  it("says which published files have no case here", () => {
    expect(notRun()).toContain("oiml-r60-load-cell");
    expect(notRun()).not.toContain("nist-ewma");
  });

  it.each([
    [{ expected: 1, got: 1 + 1e-9, within: { relative: 1e-8 } }, true],
    [{ expected: 1, got: 1 + 1e-7, within: { relative: 1e-8 } }, false],
    [{ expected: 0, got: 1e-13, within: { absolute: 1e-12 } }, true],
    [{ expected: 1, got: Number.NaN, within: { absolute: 1 } }, false],
    [{ expected: 1, got: undefined, within: { absolute: 1 } }, false],
    [{ expected: 1, got: "1" }, false],
    [{ expected: "pass", got: "pass" }, true],
  ])("tells what passes: %j", (trial, pass) => {
    expect(passes({ name: "", source: "", ...trial })).toBe(pass);
  });
});

describe("the hash of the measuring core", () => {
  it("changes with any byte of it, and with a name", () => {
    const root = join(tempFolder(), "app");
    cpSync("app/quantity", root, { recursive: true });
    const before = programHash(root);
    expect(before).toMatch(/^[0-9a-f]{64}$/);
    const file = join(root, "forceUnits.ts");
    const text = readFileSync(file, "utf8");
    writeFileSync(file, `${text} `);
    expect(programHash(root)).not.toBe(before);
    writeFileSync(file, text);
    expect(programHash(root)).toBe(before);
    rmSync(file);
    writeFileSync(join(root, "forceUnit.ts"), text);
    expect(programHash(root)).not.toBe(before);
  });

  it("is absent where the sources are", () => {
    expect(programHash(join(tempFolder(), "none"))).toBeUndefined();
  });
});

describe("holdfast validate", () => {
  it("answers JSON, writes the report, and ends with 0", async (context) => {
    const out = join(tempFolder(), "validation.pdf");
    const { io, text } = captureIo();
    expect(await runCli(["validate", "--json", "--out", out, "--paper", "Letter"], io)).toBe(0);
    const found = JSON.parse(text());
    expect(found).toMatchObject({ failed: [], programHash: programHash() });
    expect(found.cases[0]).toMatchObject({ pass: true, expected: expect.any(String), got: expect.any(String) });
    const report = pdfText(context, readFileSync(out));
    expect(report).toContain(`All ${found.cases.length} cases passed`);
    expect(report).toContain(programHash());
    expect(report).toMatch(/no accredited certificate/);
  });

  it("says loudly on paper what failed", async (context) => {
    const folder = copied();
    rmSync(join(folder, "checksums.json"));
    const text = pdfText(
      context,
      await validationReport(validate({ folder, nowMs }), [], { paper: "A4", language: "en" }),
    );
    expect(text).toMatch(/1 of \d+ cases FAILED/);
    expect(text).toContain("Do not use this installation");
    expect(text).toMatch(/checksums\s/);
    expect(text).toMatch(/the file as a whole .* FAIL/);
  });

  it.each([[["surplus.json"]], [["--paper", "A3"]]])("ends with 2 for %j", async (args) => {
    const { io, errors } = captureIo();
    expect(await runCli(["validate", ...args], io)).toBe(2);
    expect(errors().trim().split("\n")).toHaveLength(1);
  });
});
