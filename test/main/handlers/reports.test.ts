import { existsSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { ArchiveMade, ValidationMade } from "../../../app/contract/reportViews.ts";
import type { MadeFile } from "../../../app/contract/roundViews.ts";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";
import { jobEnded } from "../../support/jobEnded.ts";
import { tempFolder } from "../../support/storeInTemp.ts";

let core: CoreInTemp;
beforeEach(async () => {
  core = await coreInTemp();
});
afterEach(() => core.close());

const ended = ({ jobId }: { jobId: string }, from = core) => jobEnded(from, jobId);

describe("handing records over from a page", () => {
  it("exports, takes over in another program, and the other page hears of it", async () => {
    const { spindleId } = await smallWorks(core);
    await fileTyped(core, spindleId, "17.5 kN");
    const job = await ended(await core.call("records.export", { folder: tempFolder(), waveforms: true }));
    expect(job).toMatchObject({ state: "finished", what: "export" });
    const made = job.result as ArchiveMade;
    const other = await coreInTemp();
    try {
      const taken = await ended(await other.call("records.import", { file: made.file }), other);
      expect(taken).toMatchObject({ state: "finished", result: { added: made.entries, heads: made.heads } });
      const rows = await other.call("spindles.list");
      expect(rows.map((row) => [row.spindle.name, row.checkCount])).toEqual([["Mill 3", 1]]);
      expect(other.heard("register.changed")).toBeGreaterThan(0);
      await fileTyped(other, spindleId, "17.4 kN"); // its own chain goes on
      expect((await other.call("spindles.list"))[0]!.checkCount).toBe(2);
    } finally {
      await other.close();
    }
  });

  it("says in plain words why an archive or a folder will not do", async () => {
    const gone = await ended(await core.call("records.import", { file: "/nowhere/holdfast.zip" }));
    expect(gone).toMatchObject({ state: "failed", message: expect.stringContaining("no file /nowhere") });
    const folder = join(tempFolder(), "taken-out");
    const out = await ended(await core.call("records.export", { folder, waveforms: false }));
    expect(out).toMatchObject({ state: "failed", message: expect.stringContaining("stick taken out") });
    expect(existsSync(folder)).toBe(false);
  });

  it("makes reports with signed heads, and refuses one of a check that is not there", async () => {
    const { spindleId } = await smallWorks(core);
    const { row } = await fileTyped(core, spindleId, "17.5 kN");
    for (const order of [
      { what: "check", checkId: row.checkId, paper: "A4", language: "en" },
      { what: "spindle", spindleId, paper: "Letter", language: "en" },
      { what: "works", paper: "A4", language: "en" },
    ] as const) {
      const { fileName, base64 } = (await ended(await core.call("reports.make", order))).result as MadeFile;
      expect(fileName).toMatch(new RegExp(`^${order.what}-\\d{4}-\\d\\d-\\d\\d\\.pdf$`));
      expect(Buffer.from(base64, "base64").subarray(0, 5).toString("latin1")).toBe("%PDF-");
    }
    const none = await ended(
      await core.call("reports.make", { what: "check", checkId: spindleId, paper: "A4", language: "en" }),
    );
    expect(none).toMatchObject({ state: "failed", message: expect.stringContaining("no such check") });
  });

  it("validates the program and carries its report", async () => {
    const { cases, failed, programHash, report } = (
      await ended(await core.call("program.validate", { paper: "A4", language: "en" }))
    ).result as ValidationMade;
    expect(failed).toEqual([]);
    expect(cases.length).toBeGreaterThan(300);
    expect(programHash).toMatch(/^[0-9a-f]{64}$/);
    expect(report.mime).toBe("application/pdf");
  });
});
