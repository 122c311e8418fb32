import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { type BackupOptions, backup } from "../../../main/store/copies/backup.ts";
import { backupName, readBackupName } from "../../../main/store/copies/backupName.ts";
import { expired, usualGenerations } from "../../../main/store/copies/expired.ts";
import { restore } from "../../../main/store/copies/restore.ts";
import { swapIn } from "../../../main/store/copies/swapIn.ts";
import { chainReports } from "../../../main/store/ledger/LedgerReport.ts";
import { entriesOfKind } from "../../../main/store/ledger/readEntry.ts";
import { verifyFile } from "../../../main/store/ledger/verifyFile.ts";
import { openReader } from "../../../main/store/open.ts";
import { spindleList } from "../../../main/store/records/spindles.ts";
import type { Store } from "../../../main/store/Store.ts";
import { idOf } from "../../support/aCheck.ts";
import { everythingRead } from "../../support/everythingRead.ts";
import { fileOne, fillStore } from "../../support/fullStore.ts";
import { storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

const nowMs = Date.parse("2024-03-05T06:07:08.000Z");
const watch = { progress: () => {}, goOn: () => {} };

function filled(): Store {
  const store = storeInTemp();
  fillStore(store, 12);
  return store;
}

async function backedUp(store: Store, over: Partial<BackupOptions> = {}) {
  const db = openReader(store.path);
  try {
    return await backup(db, { folder: over.folder ?? tempFolder(), nowMs, watch, ...over });
  } finally {
    db.close();
  }
}

describe("a backup", () => {
  it("is made while the program goes on filing, holds all up to its start, and reads back the same", async () => {
    const store = filled();
    const before = everythingRead(store.db);
    let number = 100;
    const accepting = setInterval(() => fileOne(store, ++number, idOf(11)), 1);
    const db = openReader(store.path);
    const slow = { goOn: () => fileOne(store, ++number, idOf(12)), progress: () => {} };
    const made = await backup(db, { folder: tempFolder(), nowMs, watch: slow });
    clearInterval(accepting);
    db.close();
    expect(number).toBeGreaterThan(101);
    const copy = openReader(made.file);
    onTestFinished(() => void copy.close());
    expect(everythingRead(copy)).toBe(before);
    expect(made).toMatchObject({ damaged: [], damagedCount: 0, removed: [], bytes: statSync(made.file).size });
    expect((await verifyFile(copy, { rebuild: true })).damaged).toEqual([]);
  });

  it("stands alone: no log beside it, this user's only, its name says whose and when", async () => {
    const store = filled();
    const { file } = await backedUp(store);
    expect(readdirSync(join(file, ".."))).toEqual([`holdfast-${store.origin!.slice(0, 8)}-20240305T060708Z.sqlite`]);
    expect(statSync(file).mode & 0o777).toBe(0o600);
    const copy = openReader(file);
    expect(copy.pragma("journal_mode", { simple: true })).toBe("delete");
    copy.close();
    expect(readdirSync(join(file, ".."))).toHaveLength(1);
  });

  it("is refused in plain words when the stick is not there, and makes no folder in its place", async () => {
    const folder = join(tempFolder(), "stick");
    await expect(backedUp(filled(), { folder })).rejects.toMatchObject({
      code: "notFound",
      message: expect.stringContaining("Was the stick taken out"),
    });
    expect(existsSync(folder)).toBe(false);
  });

  it("never overwrites another", async () => {
    const store = filled();
    const folder = tempFolder();
    await backedUp(store, { folder });
    await expect(backedUp(store, { folder })).rejects.toMatchObject({ code: "conflict" });
    expect(readdirSync(folder)).toHaveLength(1);
  });

  it("leaves nothing behind when it is stopped", async () => {
    const folder = tempFolder();
    const goOn = () => {
      throw new Error("stopped");
    };
    await expect(backedUp(filled(), { folder, watch: { ...watch, goOn } })).rejects.toThrow("stopped");
    expect(readdirSync(folder)).toEqual([]);
  });

  it("of damaged records is kept under a name that says so, and costs no older one", async () => {
    const store = filled();
    const folder = tempFolder();
    for (let day = 0; day < 5; day += 1) {
      await backedUp(store, { folder, nowMs: nowMs + day * 1000 });
    }
    store.db.exec("UPDATE waveform SET bytes = zeroblob(length(bytes))");
    const made = await backedUp(store, { folder, nowMs: nowMs + 86_400_000, keep: usualGenerations });
    expect(made.damagedCount).toBeGreaterThan(0);
    expect(made.file).toMatch(/\.damaged\.sqlite$/);
    expect(made.removed).toEqual([]);
    expect(readdirSync(folder)).toHaveLength(6);
  });

  it("thins out its own older ones only", async () => {
    const store = filled();
    const folder = tempFolder();
    for (let i = 0; i < 6; i += 1) await backedUp(store, { folder, nowMs: nowMs + i * 1000 });
    writeFileSync(join(folder, "holdfast-00000000-20200101T000000Z.sqlite"), "another works'");
    writeFileSync(join(folder, "letter.txt"), "not ours");
    const made = await backedUp(store, { folder, nowMs: nowMs + 10_000, keep: usualGenerations });
    expect(made.removed).toHaveLength(4);
    expect(readdirSync(folder)).toHaveLength(5);
    expect(readdirSync(folder)).toContain("letter.txt");
  });
});

describe("a backup under a clock that was set back by a year", () => {
  it("stays, though a folder full of others bears later dates, and so do they", async () => {
    const store = filled();
    const folder = tempFolder();
    const day = 86_400_000;
    const { origin } = store;
    const name = (atMs: number) => backupName({ demo: false, origin: origin!, atMs });
    const later = Array.from({ length: 60 }, (_, i) => name(nowMs - i * day));
    for (const one of later) writeFileSync(join(folder, one), "");
    const behindMs = nowMs - 365 * day;
    for (let i = 1; i <= 5; i += 1) writeFileSync(join(folder, name(behindMs - i)), ""); // of the same second and day
    const made = await backedUp(store, { folder, nowMs: behindMs, keep: { days: 14, weeks: 8, months: 24 } });
    expect(existsSync(made.file)).toBe(true);
    const left = new Set(readdirSync(folder));
    expect(later.every((one) => left.has(one))).toBe(true);
  });
});

describe("backup names", () => {
  it("read back what they were made of", () => {
    const name = { demo: true, origin: "0123abcd", atMs: nowMs };
    expect(readBackupName(backupName(name))).toEqual(name);
    expect(readBackupName("holdfast-0123abcd-20240305T060708Z.sqlite.part")).toBeUndefined();
    expect(readBackupName("holdfast-0123abcd-20249905T060708Z.sqlite")).toBeUndefined();
  });
});

describe("generations", () => {
  const day = 86_400_000;
  const daily = (days: number) => Array.from({ length: days }, (_, i) => nowMs - i * day);

  it("keep the newest three whatever the rule", () => {
    expect(expired([5, 1, 4, 2, 3], { days: 0, weeks: 0, months: 0 })).toEqual([1, 3]);
  });

  it("keep fourteen days, eight weeks and two years of months of a daily backup", () => {
    const all = daily(1000);
    const gone = new Set(expired(all, usualGenerations));
    const kept = all.filter((_, i) => !gone.has(i));
    expect(kept.slice(0, 14)).toEqual(all.slice(0, 14));
    expect(kept.length).toBeLessThanOrEqual(14 + 8 + 24);
    expect(kept.length).toBeGreaterThan(35);
    // March 2024 and the 23 months before it: the last backup of April 2022 is the oldest.
    expect(new Date(kept.at(-1)!).toISOString().slice(0, 10)).toBe("2022-04-30");
  });

  it("do not count days without a backup", () => {
    const weekly = Array.from({ length: 20 }, (_, i) => nowMs - i * 7 * day);
    expect(expired(weekly, { days: 14, weeks: 0, months: 0 })).toHaveLength(6);
  });

  it("of a day keep the last", () => {
    const hours = Array.from({ length: 10 }, (_, i) => nowMs - day + i);
    expect(expired([...hours, nowMs, nowMs + 1, nowMs + 2], { days: 2, weeks: 0, months: 0 })).toEqual([
      0, 1, 2, 3, 4, 5, 6, 7, 8,
    ]);
  });
});

describe("a restore", () => {
  it("gives the same records in a chain of its own, and files that it was done", async () => {
    const store = filled();
    const { file } = await backedUp(store);
    const to = join(tempFolder(), "new", "restored.sqlite");
    const report = await restore({ from: file, to, demo: false, now: () => nowMs, watch });
    expect(readdirSync(join(to, "..")).filter((name) => name.startsWith("restored.sqlite"))).toEqual([
      "restored.sqlite",
    ]);
    const restored = storeInTemp({ path: to, machine: undefined });
    expect(restored.origin).not.toBe(store.origin);
    const [old, own] = chainReports(restored.db, []);
    expect(old).toMatchObject({ origin: store.origin, head: report.chains[0]!.head });
    expect(own).toMatchObject({ origin: restored.origin, entries: 1 });
    expect(entriesOfKind(restored.db, "act").map((e) => e.body.what)).toEqual(["restored"]);
    expect(spindleList(restored.db)).toEqual(spindleList(store.db));
    expect((await verifyFile(restored.db, { rebuild: true })).damaged).toEqual([]);
  });

  it("takes a data file from a dead computer with the log beside it", async () => {
    const store = filled();
    const folder = tempFolder();
    const from = join(folder, "holdfast.sqlite");
    for (const rest of ["", "-wal"]) writeFileSync(`${from}${rest}`, readFileSync(`${store.path}${rest}`));
    const to = join(folder, "restored.sqlite");
    const report = await restore({ from, to, demo: false, now: () => nowMs, watch });
    expect(report.entries).toBe(chainReports(store.db, [])[0]!.entries);
  });

  it.each([
    ["a damaged backup", "damaged", (file: string) => flipMiddle(file)],
    ["a file cut short", "damaged", (file: string) => writeFileSync(file, readFileSync(file).subarray(0, 20_000))],
    ["a text file", "damaged", (file: string) => writeFileSync(file, "spindle;force\n".repeat(1000))],
    ["a newer program's backup", "newer", (file: string) => patch(file, 60, [0, 0, 0, 99])],
    ["the demo's backup", "demoMismatch", (file: string) => patch(file, 68, [...Buffer.from("Holx")])],
  ])("refuses %s, and makes nothing", async (_, code, spoil) => {
    const { file } = await backedUp(filled());
    spoil(file);
    const spoilt = readFileSync(file);
    const folder = tempFolder();
    await expect(
      restore({ from: file, to: join(folder, "new.sqlite"), demo: false, now: () => nowMs, watch }),
    ).rejects.toMatchObject({ code });
    expect(readdirSync(folder)).toEqual([]);
    expect(readFileSync(file).equals(spoilt)).toBe(true);
  });

  it("never overwrites", async () => {
    const store = filled();
    const { file } = await backedUp(store);
    const other = filled();
    await expect(restore({ from: file, to: other.path, demo: false, now: () => nowMs, watch })).rejects.toMatchObject({
      code: "conflict",
    });
  });

  it("can be swapped in, the old file kept beside it; not while somebody reads the old one", async () => {
    const store = filled();
    const { file } = await backedUp(store);
    const dataFile = store.path;
    const to = join(dataFile, "..", "restored.sqlite");
    await restore({ from: file, to, demo: false, now: () => nowMs, watch });
    expect(() => swapIn(to, dataFile, nowMs)).toThrow(expect.objectContaining({ code: "busy" }));
    store.close();
    expect(existsSync(`${dataFile}-wal`)).toBe(false);
    const old = readFileSync(dataFile);
    const kept = swapIn(to, dataFile, nowMs);
    expect(kept).toBe(join(dataFile, "..", "before-restore-20240305T060708Z.sqlite"));
    expect(readFileSync(kept).equals(old)).toBe(true);
    expect(storeInTemp({ path: dataFile }).refusal).toBeUndefined();
    expect(existsSync(to)).toBe(false);
  });

  const noLinks = () => {
    throw Object.assign(new Error("no second names here"), { code: "EPERM" });
  };

  it("is swapped in on a disk without second names too", () => {
    const folder = tempFolder();
    const [dataFile, to] = [join(folder, "holdfast.sqlite"), join(folder, "restored.sqlite")];
    writeFileSync(dataFile, "old");
    writeFileSync(to, "new");
    const kept = swapIn(to, dataFile, nowMs, { link: noLinks });
    expect([readFileSync(dataFile, "utf8"), readFileSync(kept, "utf8")]).toEqual(["new", "old"]);
  });

  it.each([undefined, noLinks])("leaves the old file in its place when the new one cannot be moved in", (link) => {
    const folder = tempFolder();
    const dataFile = join(folder, "holdfast.sqlite");
    writeFileSync(dataFile, "old");
    writeFileSync(`${dataFile}-wal`, "log");
    expect(() => swapIn(join(folder, "gone.sqlite"), dataFile, nowMs, { damaged: true, link })).toThrow("ENOENT");
    expect(readFileSync(dataFile, "utf8")).toBe("old");
    expect(readFileSync(`${dataFile}-wal`, "utf8")).toBe("log");
    expect(readdirSync(folder).filter((name) => name.startsWith("before"))).toEqual([]);
  });
});

function patch(file: string, at: number, bytes: readonly number[]): void {
  const all = readFileSync(file);
  all.set(bytes, at);
  writeFileSync(file, all);
}

function flipMiddle(file: string): void {
  const all = readFileSync(file);
  // In the canonical text of an entry, which is there plain or deflated somewhere in the middle.
  for (let at = Math.floor(all.length / 2); at < all.length / 2 + 4096; at += 64) all[at]! ^= 0x10;
  writeFileSync(file, all);
}
