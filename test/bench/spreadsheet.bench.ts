import { fork } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { invented } from "../support/aCheck.ts";
import { workbook } from "../support/workbook.ts";
import type { SheetRun } from "./archive/runSheet.ts";
import type { BenchRow } from "./BenchRow.ts";

const ROWS = 200_000;
const SPINDLES = 500;

/** Old checks from a spreadsheet of 200,000 rows: what would come of it, and all of it filed in one transaction. */
export async function spreadsheetBench(): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-bench-"));
  try {
    const rows = oldChecks();
    const [csv, xlsx] = [join(folder, "old.csv"), join(folder, "old.xlsx")];
    writeFileSync(csv, rows.map((row) => row.join(",")).join("\n"));
    writeFileSync(xlsx, workbook(rows));
    const fromCsv = await run(join(folder, "csv.sqlite"), csv);
    const fromXlsx = await run(join(folder, "xlsx.sqlite"), xlsx);
    return [
      seconds("preview of 200,000 old checks, CSV", fromCsv.previewS, 15),
      seconds("preview of 200,000 old checks, XLSX", fromXlsx.previewS, 15),
      // The same pace as the archive's: a hundred thousand a minute.
      seconds("import of 200,000 old checks, CSV", fromCsv.importS, 120),
      seconds("import of 200,000 old checks, XLSX", fromXlsx.importS, 120),
      memory("memory while importing them, CSV", fromCsv),
      memory("memory while importing them, XLSX", fromXlsx),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function oldChecks(): (string | number)[][] {
  const next = invented(7);
  const day = (i: number) => new Date(Date.UTC(2005, 0, 1 + 20 * Math.floor(i / SPINDLES))).toISOString().slice(0, 10);
  const rows = Array.from({ length: ROWS }, (_, i) => [
    `Mill ${i % SPINDLES}`,
    day(i),
    Math.round(100 * (17 + next())) / 100,
    `note ${i}`,
  ]);
  return [["Spindle", "Date", "Force_kN", "Remark"], ...rows];
}

function run(path: string, file: string): Promise<SheetRun> {
  return new Promise((done, fail) => {
    const child = fork(join(import.meta.dirname, "archive", "runSheet.ts"), [path, file]);
    child.on("message", (message) => done(message as SheetRun)); // what `runSheet` sends
    child.on("exit", (code) => fail(new Error(`the import ended with ${code}`))); // no-op when it has answered
  });
}

const seconds = (name: string, measured: number, limit: number): BenchRow => ({
  name,
  measured,
  limit,
  unit: "s",
  met: measured < limit,
});

/** A page's thread must bear it beside the core. */
function memory(name: string, { peakBytes }: SheetRun): BenchRow {
  const measured = peakBytes / 1e6;
  return { name, measured, limit: 1_500, unit: "MB", met: measured < 1_500, note: "peak resident, the whole process" };
}

if (import.meta.main) {
  for (const row of await spreadsheetBench()) process.stdout.write(`${JSON.stringify(row)}\n`);
}
