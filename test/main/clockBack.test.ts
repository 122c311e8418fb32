import { mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { readBackupName } from "../../main/store/copies/backupName.ts";
import { isSigned, signedHeads } from "../../main/store/ledger/signedHeads.ts";
import { verifyFile } from "../../main/store/ledger/verifyFile.ts";
import { openReader } from "../../main/store/openReader.ts";
import { coreInTemp, fileTyped, smallWorks } from "../support/coreInTemp.ts";
import { ManualClock } from "../support/ManualClock.ts";
import { tempFolder } from "../support/storeInTemp.ts";

const DAY_MS = 86_400_000;
const YEAR_MS = 365 * DAY_MS;

async function begun(folder = tempFolder()) {
  const clock = new ManualClock();
  let offMs = 0;
  const core = await coreInTemp({ folder, clock, now: () => clock.wallMs() + offMs });
  onTestFinished(() => core.close());
  const setClock = (ms: number) => {
    offMs = ms;
  };
  return { core, clock, setClock, folder };
}
const until = async (holds: () => Promise<boolean> | boolean) => {
  for (let i = 0; i < 500; i += 1) {
    if (await holds()) return;
    await new Promise((done) => setTimeout(done, 20));
  }
  expect.fail("it did not come to that in ten seconds");
};

describe("a clock that is set back by a year", () => {
  it("loses nothing: what is filed follows in the chain, is marked, and due days stand once it is set right", async () => {
    const { core, setClock } = await begun();
    const { spindleId } = await smallWorks(core);
    const [row] = await core.call("spindles.list");
    await core.call("spindles.save", { ...row!.spindle, intervalDays: 90 });
    await fileTyped(core, spindleId, "18 kN");
    const due = async () => (await core.call("rounds.due")).rows.find((one) => one.spindleId === spindleId)?.dueOn;
    const before = await due();
    expect(before).toMatch(/^\d{4}-\d\d-\d\d$/);

    setClock(-YEAR_MS);
    const { seriesId } = (await core.call("state.snapshot")).draft;
    await core.call("series.tag", { seriesId, spindleId });
    await core.call("series.type", { seriesId, text: "16.5 kN" });
    await expect(core.call("series.accept", { seriesId, spindleId })).rejects.toMatchObject({
      failure: { key: "clockBehind" },
    });
    expect((await core.call("state.snapshot")).draft.typed?.valueN).toBe(16_500); // nothing of it is lost meanwhile
    const { row: doubtful } = await core.call("series.accept", { seriesId, spindleId, clockConfirmed: true });
    expect((await core.call("checks.get", { checkId: doubtful.checkId })).check.clockDoubtful).toBe(true);
    expect(await due()).toBe(before); // the check of a year ago, as it seems, is not the last one

    setClock(0);
    expect(await due()).toBe(before);
    await fileTyped(core, spindleId, "17.9 kN"); // and nothing is asked
    expect((await core.call("spindles.list"))[0]).toMatchObject({ checkCount: 3, last: { valueN: 17_900 } });
    const db = openReader(core.dataFile);
    onTestFinished(() => void db.close());
    expect((await verifyFile(db)).damaged).toEqual([]);
  });

  it("does not keep a head from being signed, nor spoil the signatures before it", async () => {
    const folder = tempFolder();
    const first = await begun(folder);
    const { spindleId } = await smallWorks(first.core);
    await fileTyped(first.core, spindleId, "18 kN");
    await first.core.program.close(); // signs
    const clock = new ManualClock();
    const second = await coreInTemp({ folder, clock, now: () => clock.wallMs() - YEAR_MS });
    await second.call("operators.save", { name: "Kay Lund", role: "technician", state: "inUse" });
    await second.close();
    const db = openReader(join(folder, "holdfast.sqlite"));
    onTestFinished(() => void db.close());
    const heads = signedHeads(db);
    expect(heads.length).toBeGreaterThan(1);
    expect(heads.every(isSigned)).toBe(true);
    const [before, last] = heads.slice(-2);
    expect(last!.seq).toBeGreaterThan(before!.seq);
    expect(Date.parse(last!.at)).toBeLessThan(Date.parse(before!.at));
    expect((await verifyFile(db)).damaged).toEqual([]);
  });

  it("does not keep the daily copy from being made, and takes none away", async () => {
    const { core, clock, setClock } = await begun();
    await smallWorks(core);
    const stick = join(tempFolder(), "stick");
    mkdirSync(stick);
    await core.call("backup.choose", { folder: stick, keep: { days: 1, weeks: 0, months: 0 } });
    await until(() => readdirSync(stick).length === 1 && !readdirSync(stick)[0]!.endsWith(".part"));
    const [made] = readdirSync(stick);
    for (let day = 0; day < 5; day += 1) {
      setClock(-YEAR_MS + day * DAY_MS);
      const fromMs = clock.wallMs() - YEAR_MS + day * DAY_MS;
      const isOfToday = (name: string) => {
        const atMs = readBackupName(name)?.atMs ?? 0;
        return atMs >= fromMs - 1_000 && atMs < fromMs + DAY_MS;
      };
      await until(async () => {
        await clock.advance(60_000); // a look while one is still at it is none
        return readdirSync(stick).some(isOfToday);
      });
    }
    await until(() => readdirSync(stick).length === 4); // three of the wrong year stay whatever the rule, and the right one
    expect(readdirSync(stick)).toContain(made);
    expect((await core.call("state.snapshot")).backup).toMatchObject({ problem: undefined, late: undefined });
  });

  it("gives a minute to take back a check, and not a year", async () => {
    const { core, setClock } = await begun();
    const { spindleId } = await smallWorks(core);
    const { row } = await fileTyped(core, spindleId, "18 kN");
    setClock(-YEAR_MS);
    await expect(core.call("checks.undo", { checkId: row.checkId })).rejects.toMatchObject({
      failure: { key: "undoOver" },
    });
  });
});
