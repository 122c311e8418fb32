import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import type { RestoreTried } from "../../../app/contract/backupViews.ts";
import { backupName } from "../../../main/store/copies/backupName.ts";
import { coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";
import { ManualClock } from "../../support/ManualClock.ts";
import { tempFolder } from "../../support/storeInTemp.ts";

async function begun() {
  const clock = new ManualClock();
  const core = await coreInTemp({ clock, now: () => clock.wallMs() });
  onTestFinished(() => core.close());
  const works = await smallWorks(core);
  const backup = async () => (await core.call("state.snapshot")).backup;
  const until = async (holds: () => boolean | Promise<boolean>) => {
    for (let i = 0; i < 500; i += 1) {
      if (await holds()) return;
      await new Promise((done) => setTimeout(done, 20));
    }
    expect.fail("it did not come to that in ten seconds");
  };
  const finished = (jobId: string) =>
    core.pushes.find((push) => push.event === "job.finished" && (push.data as { jobId: string }).jobId === jobId)
      ?.data as { state: string; message: string; result: unknown } | undefined;
  const job = async ({ jobId }: { jobId: string }) => {
    await until(() => finished(jobId) !== undefined);
    return finished(jobId)!;
  };
  return { core, clock, works, backup, until, job };
}

const failureOf = (call: Promise<unknown>) =>
  call.then(
    () => undefined,
    (cause: { failure: { code: string; key?: string } }) => cause.failure,
  );

describe("the daily backup in the running program", () => {
  it("is made at once where it is told to, verified, and again a day later, older ones thinned out", async () => {
    const { core, clock, backup, until } = await begun();
    const folder = tempFolder();
    const keep = { days: 1, weeks: 0, months: 0 };
    const { origin } = (await core.call("state.snapshot")).program;
    const old = [2, 3, 4, 5].map((day) =>
      backupName({ demo: false, origin: origin!, atMs: clock.wallMs() - day * 86_400_000 }),
    );
    for (const name of old) writeFileSync(join(folder, name), "");
    await core.call("backup.choose", { folder, keep });
    await until(async () => (await backup()).verifiedEntries !== undefined);
    expect(await backup()).toMatchObject({ folder, keep, problem: undefined, late: undefined });
    await until(async () => (await backup()).lastAtMs === Math.floor(clock.wallMs() / 1000) * 1000);
    const left = readdirSync(folder);
    expect(left).toHaveLength(3); // the newest three stay whatever the rule
    expect(old.slice(2).some((name) => left.includes(name))).toBe(false);
    clock.stall(86_400_000);
    await clock.advance(60_000);
    await until(async () => (await backup()).lastAtMs! > clock.wallMs() - 3_600_000);
    expect(core.heard("backup.changed")).toBeGreaterThanOrEqual(2);
  });

  it("says why it failed, tries again by itself, and is well when the stick is back", async () => {
    const { core, clock, backup, until } = await begun();
    const stick = join(tempFolder(), "stick");
    await core.call("backup.choose", { folder: stick });
    await until(async () => (await backup()).problem !== undefined);
    expect(await backup()).toMatchObject({
      late: "overdue",
      problem: expect.stringContaining("Was the stick taken out"),
    });
    mkdirSync(stick);
    await clock.advance(11 * 60_000);
    await until(async () => (await backup()).problem === undefined && (await backup()).lastAtMs !== undefined);
    expect((await backup()).late).toBeUndefined();
  });

  it("remembers the folder over a restart, and forgets it when told", async () => {
    const folder = tempFolder();
    const home = tempFolder();
    const first = await coreInTemp({ folder: home, clock: new ManualClock() });
    await first.call("backup.choose", { folder });
    await first.close();
    const second = await coreInTemp({ folder: home, clock: new ManualClock() });
    onTestFinished(() => second.close());
    expect((await second.call("state.snapshot")).backup.folder).toBe(folder);
    expect((await second.call("backup.choose", { folder: null })).folder).toBeUndefined();
  });

  it("leaves no timer when the program ends", async () => {
    const clock = new ManualClock();
    const core = await coreInTemp({ clock });
    await core.close();
    expect(clock.pending).toBe(0);
  });
});

describe("the walk through all records when nobody measures", () => {
  it("finds damage deep in the file and stops all writing, and every page is told", async () => {
    const clock = new ManualClock();
    const folder = tempFolder();
    const first = await coreInTemp({ folder, clock });
    const { spindleId } = await smallWorks(first);
    for (let i = 0; i < 30; i += 1) await fileTyped(first, spindleId, "18 kN"); // past what the look at the start sees
    await first.close();
    const { default: Database } = await import("better-sqlite3");
    const db = new Database(first.dataFile);
    db.exec("UPDATE entry SET hash = zeroblob(32) WHERE n = (SELECT min(n) + 3 FROM entry)");
    db.close();
    const core = await coreInTemp({ folder, clock, now: () => clock.wallMs() });
    onTestFinished(() => core.close());
    expect((await core.call("state.snapshot")).program.readOnly).toBeUndefined();
    await clock.advance(12 * 60_000);
    for (let i = 0; i < 300 && core.heard("program.changed") === 0; i += 1)
      await new Promise((done) => setTimeout(done, 20));
    expect((await core.call("state.snapshot")).program.readOnly).toContain("damaged");
    expect(await failureOf(fileTyped(core, spindleId, "18 kN"))).toMatchObject({ code: "readOnly" });
  });
});

describe("a restore from the screen", () => {
  it("lists backups, compares first, swaps, keeps the old file, and files that it was done", async () => {
    const { core, works, job, until, backup } = await begun();
    const folder = tempFolder();
    await fileTyped(core, works.spindleId, "18 kN");
    await core.call("backup.choose", { folder });
    await until(async () => (await backup()).lastAtMs !== undefined);
    for (const text of ["17 kN", "16.5 kN"]) await fileTyped(core, works.spindleId, text);
    writeFileSync(join(folder, "letter.txt"), "not ours");
    const [row, ...others] = await core.call("backup.list", { folder });
    expect(others).toEqual([]);
    expect(row).toMatchObject({ own: true });
    const tried = (await job(await core.call("restore.try", { file: row!.file }))).result as RestoreTried;
    expect(tried).toMatchObject({ lost: 2, lostChecks: 2 });
    expect(tried.chains[0]!.here - tried.chains[0]!.same).toBe(2);
    expect((await core.call("spindles.list"))[0]!.checkCount).toBe(3); // nothing has changed so far
    const { kept } = await core.call("restore.swap", { file: tried.file });
    expect(existsSync(kept)).toBe(true);
    expect((await core.call("spindles.list"))[0]!.checkCount).toBe(1);
    await fileTyped(core, works.spindleId, "18 kN"); // goes on in a chain of its own
    const verified = (await job(await core.call("records.verify"))).result as { damaged: unknown[]; chains: unknown[] };
    expect(verified.damaged).toEqual([]);
    expect(verified.chains).toHaveLength(2);
  });

  it("refuses while a series is in work, files that were not restored here, and what is gone", async () => {
    const { core, works, job, until, backup } = await begun();
    const folder = tempFolder();
    await core.call("backup.choose", { folder });
    await until(async () => (await backup()).lastAtMs !== undefined);
    const [row] = await core.call("backup.list", { folder });
    const tried = (await job(await core.call("restore.try", { file: row!.file }))).result as RestoreTried;
    const { seriesId } = (await core.call("state.snapshot")).draft;
    await core.call("series.type", { seriesId, text: "17 kN" });
    expect(await failureOf(core.call("restore.swap", { file: tried.file }))).toMatchObject({
      key: "restore.seriesInWork",
    });
    await core.call("series.clear", { seriesId });
    expect(await failureOf(core.call("restore.swap", { file: row!.file }))).toMatchObject({ key: "restore.notOurs" });
    expect(await failureOf(core.call("restore.forget", { file: core.dataFile }))).toMatchObject({
      key: "restore.notOurs",
    });
    await core.call("restore.forget", { file: tried.file });
    expect(existsSync(tried.file)).toBe(false);
    expect(await failureOf(core.call("restore.swap", { file: tried.file }))).toMatchObject({ key: "restore.gone" });
    expect((await core.call("spindles.list"))[0]!.spindle.spindleId).toBe(works.spindleId);
  });

  it.each([
    ["a newer program's backup", 60, [0, 0, 0, 99], "newer"],
    ["the demo's backup", 68, [...Buffer.from("Holx")], "demo"],
  ])("answers %s in plain words, and the file in use stays", async (_, at, bytes, says) => {
    const { core, job, until, backup } = await begun();
    const folder = tempFolder();
    await core.call("backup.choose", { folder });
    await until(async () => (await backup()).lastAtMs !== undefined);
    const [row] = await core.call("backup.list", { folder });
    patch(row!.file, at, bytes);
    const ended = await job(await core.call("restore.try", { file: row!.file }));
    expect(ended.state).toBe("failed");
    expect(ended.message.toLowerCase()).toContain(says);
    expect(readdirSync(core.folder).filter((name) => name.startsWith("restored"))).toEqual([]);
  });

  it("says so when the stick was taken out", async () => {
    const { core, job } = await begun();
    const folder = join(tempFolder(), "stick");
    expect(await failureOf(core.call("backup.list", { folder }))).toMatchObject({ key: "backup.folderGone" });
    const ended = await job(await core.call("restore.try", { file: join(folder, "x.sqlite") }));
    expect(ended).toMatchObject({ state: "failed", message: expect.stringContaining("There is no backup") });
  });

  it("goes on when the key file is lost: a new one is made, and old signatures still prove themselves", async () => {
    const folder = tempFolder();
    const first = await coreInTemp({ folder });
    await smallWorks(first);
    await first.close();
    const [key] = readdirSync(folder).filter((name) => name.endsWith(".key"));
    rmSync(join(folder, key!));
    const core = await coreInTemp({ folder });
    onTestFinished(() => core.close());
    const jobId = (await core.call("records.verify")).jobId;
    const done = () =>
      core.pushes.find((p) => p.event === "job.finished" && (p.data as { jobId: string }).jobId === jobId);
    for (let i = 0; i < 300 && done() === undefined; i += 1) await new Promise((r) => setTimeout(r, 20));
    expect((done()!.data as { result: { damaged: unknown[]; keys: unknown[] } }).result).toMatchObject({ damaged: [] });
    expect(existsSync(join(folder, key!))).toBe(true);
  });

  it("takes the place of a data file that is damaged and only read", async () => {
    const { core, works, until, backup } = await begun();
    const folder = tempFolder();
    await fileTyped(core, works.spindleId, "18 kN");
    await core.call("backup.choose", { folder });
    await until(async () => (await backup()).lastAtMs !== undefined);
    await core.program.close();
    const { default: Database } = await import("better-sqlite3");
    const db = new Database(core.dataFile);
    db.exec("UPDATE entry SET hash = zeroblob(32) WHERE n = (SELECT max(n) FROM entry)");
    db.close();
    const again = await coreInTemp({ folder: core.folder });
    onTestFinished(() => again.close());
    expect((await again.call("state.snapshot")).program.readOnly).toContain("damaged");
    const [row] = await again.call("backup.list", { folder });
    const { jobId } = await again.call("restore.try", { file: row!.file });
    const done = () =>
      again.pushes.find((p) => p.event === "job.finished" && (p.data as { jobId: string }).jobId === jobId);
    for (let i = 0; i < 300 && done() === undefined; i += 1) await new Promise((r) => setTimeout(r, 20));
    const tried = (done()!.data as { result: RestoreTried }).result;
    await again.call("restore.swap", { file: tried.file });
    expect((await again.call("state.snapshot")).program.readOnly).toBeUndefined();
    expect((await again.call("spindles.list"))[0]!.checkCount).toBe(1);
  });
});

function patch(file: string, at: number, bytes: readonly number[]): void {
  const all = readFileSync(file);
  all.set(bytes, at);
  writeFileSync(file, all);
}
