import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, type TestContext } from "vitest";
import { outsideTool } from "./outsideTool.ts";

/**
 * What a report says, read out by a program that is not ours, after two more have found nothing wrong with it.
 * @param language  that the document says of itself
 */
export function pdfText(context: Pick<TestContext, "skip">, pdf: Uint8Array, language = "en"): string {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-pdf-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const file = join(folder, "report.pdf");
  writeFileSync(file, pdf);
  const checked = outsideTool(context, "qpdf", ["--check", file]);
  expect(checked.stdout + checked.stderr).toContain("No syntax or stream encoding errors found");
  expect(checked.status).toBe(0);
  const fonts = outsideTool(context, "pdffonts", [file]).stdout.trim().split("\n").slice(2);
  expect(fonts.length).toBeGreaterThan(0);
  for (const font of fonts) expect(font).toMatch(/Atkinson.* yes yes yes /); // embedded, subset, with its characters named
  const info = outsideTool(context, "pdfinfo", [file]).stdout;
  expect(info).toMatch(/Tagged: +yes/);
  expect(info).toMatch(/Title: +\S/);
  const object = outsideTool(context, "qpdf", ["--json", "--json-key=qpdf", file]).stdout;
  expect(object).toContain(`"/Lang": "u:${language}"`);
  return outsideTool(context, "pdftotext", ["-layout", "-enc", "UTF-8", file, "-"]).stdout;
}
