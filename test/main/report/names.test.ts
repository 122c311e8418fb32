import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { describe, expect, it, onTestFinished, type TestContext } from "vitest";
import { exportArchive } from "../../../main/archive/exportArchive.ts";
import type { About } from "../../../main/report/records/About.ts";
import { checkReport } from "../../../main/report/records/checkReport.ts";
import { spindleReport } from "../../../main/report/records/spindleReport.ts";
import { writingOf } from "../../../main/report/records/Writing.ts";
import { worksReport } from "../../../main/report/records/worksReport.ts";
import { roundReport } from "../../../main/report/round/result/roundReport.ts";
import { openReader } from "../../../main/store/open.ts";
import { type CoreInTemp, coreInTemp } from "../../support/coreInTemp.ts";
import { pdfText } from "../../support/pdfText.ts";
import { roundWorks } from "../../support/roundWorks.ts";

const NAME = "Wilhelmina Zaunkönig";
const leaked = /Wilhelmina|Zaunk/;

async function worksOfOnePerson() {
  const core = await coreInTemp();
  onTestFinished(() => core.close());
  const { operatorId } = await core.call("operators.save", { name: NAME, role: "technician", state: "inUse" });
  const { seriesId } = (await core.call("state.snapshot")).draft;
  await core.call("series.tag", { seriesId, operatorId });
  const works = await roundWorks(core, [10, 14]);
  const spindleId = works.spindleIds[0]!;
  const round = await core.call("rounds.save", {
    name: "Hall A",
    on: new Date().toISOString().slice(0, 10),
    operatorId,
    made: "byHand",
    note: "",
    stops: works.spindleIds.map((id) => ({ spindleId: id })),
  });
  await core.call("services.save", { spindleId, at: "2024-01-05", kind: "springs", newBaseline: false });
  const [first] = (await core.call("checks.list", { spindleId, limit: 10 })).rows;
  await core.call("checks.void", { checkId: first!.checkId, reason: "as agreed" });
  return { core, operatorId, round, spindleId, checkId: first!.checkId };
}

function about(core: CoreInTemp): About {
  const db = openReader(core.dataFile);
  onTestFinished(() => void db.close());
  const made = { nowMs: Date.now(), paper: "A4", version: "0.1.0", programHash: "ab".repeat(32), demo: false } as const;
  return { ...made, db, write: writingOf("en"), goOn: () => {} };
}

describe("a person's name", () => {
  it("stands on no paper: initials do", async (context: TestContext) => {
    const { core, round, spindleId, checkId } = await worksOfOnePerson();
    const sheet = await core.call("rounds.sheet", { roundId: round.roundId, as: "pdf", language: "en" });
    const papers = {
      sheet: new Uint8Array(Buffer.from(sheet.base64, "base64")),
      result: await roundReport(about(core), round.roundId),
      check: await checkReport(about(core), checkId),
      spindle: await spindleReport(about(core), spindleId),
    };
    for (const [what, bytes] of Object.entries(papers)) {
      const text = pdfText(context, bytes);
      expect(text, what).not.toMatch(leaked);
      expect(text, what).toMatch(/\bWZ\b/);
    }
    expect(pdfText(context, await worksReport(about(core), 0))).not.toMatch(leaked);
    const csv = await core.call("rounds.sheet", { roundId: round.roundId, as: "csv", language: "de" });
    expect(Buffer.from(csv.base64, "base64").toString()).not.toMatch(leaked);
  });

  it("once erased is the end of a number on the round's sheet too", async (context: TestContext) => {
    const { core, operatorId, round } = await worksOfOnePerson();
    await core.call("people.hide", { operatorId, how: "erase" });
    const sheet = await core.call("rounds.sheet", { roundId: round.roundId, as: "pdf", language: "en" });
    const text = pdfText(context, new Uint8Array(Buffer.from(sheet.base64, "base64")));
    expect(text).not.toMatch(leaked);
    expect(text).toContain(`operator …${operatorId.slice(-4)}`);
  });

  it("leaves in no file of the archive", async () => {
    const { core, operatorId } = await worksOfOnePerson();
    const folder = mkdtempSync(join(tmpdir(), "holdfast-names-"));
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    const file = join(folder, "all.zip");
    const watch = { progress: () => {}, goOn: () => {} };
    await exportArchive(about(core).db, { file, waveforms: true, program: "0.1.0", demo: false, nowMs: 0, watch });
    const members = Object.entries(unzipSync(readFileSync(file)));
    expect(members.some(([, bytes]) => Buffer.from(bytes).includes(operatorId))).toBe(true);
    for (const [name, bytes] of members) expect(Buffer.from(bytes).toString(), name).not.toMatch(leaked);
  });
});
