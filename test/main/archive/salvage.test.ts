import { createHash } from "node:crypto";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { exportArchive } from "../../../main/archive/exportArchive.ts";
import { importArchive } from "../../../main/archive/importArchive.ts";
import type { Store } from "../../../main/store/Store.ts";
import { invented } from "../../support/aCheck.ts";
import { membersOf, quietWatch } from "../../support/archives.ts";
import { lookAt } from "../../support/flipBits.ts";
import { fillStore } from "../../support/fullStore.ts";
import { storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

function closedStore(): Store {
  const store = storeInTemp();
  fillStore(store, 24);
  store.close();
  return store;
}

const options = { waveforms: true, demo: false, program: "0.1.0", nowMs: Date.UTC(2024, 4, 1), watch: quietWatch };
const sha = (line: string) => createHash("sha256").update(line).digest("hex");
const linesOf = (text: string | undefined) => (text ?? "").split("\n").filter((line) => line !== "");
const ledgerOf = (members: Record<string, string>) =>
  Object.keys(members)
    .filter((name) => name.startsWith("ledger/"))
    .sort()
    .flatMap((name) => linesOf(members[name]));

/** What is saved of a file, and the hashes of all that was filed in it when it was whole. */
async function salvaged(path: string) {
  const file = join(tempFolder(), "saved.zip");
  const made = await lookAt(path, (db) => exportArchive(db, { ...options, file, salvage: true }));
  return made && { made, file, members: membersOf(file) };
}

async function hashesOf(path: string): Promise<Set<string>> {
  const whole = (await salvaged(path))!;
  expect(whole.made.leftOut).toBe(0);
  return new Set(ledgerOf(whole.members).map(sha));
}

function spoil(path: string, sql: string): void {
  const db = new Database(path);
  db.exec(sql);
  db.close();
}

describe("what is saved of damaged records", () => {
  it("is all of a whole file, the same as an export", async () => {
    const { path } = closedStore();
    const saved = (await salvaged(path))!;
    const file = join(tempFolder(), "whole.zip");
    await lookAt(path, (db) => exportArchive(db, { ...options, file }));
    const whole = membersOf(file);
    expect(ledgerOf(saved.members)).toEqual(ledgerOf(whole));
    expect(saved.members["csv/check.csv"]).toBe(whole["csv/check.csv"]);
    expect(saved.members["waveforms.jsonl"]).toBe(whole["waveforms.jsonl"]);
    expect(saved.members["damaged.txt"]).toContain("0 places");
  });

  it.each([
    [
      "an entry altered",
      "UPDATE entry SET packed = CAST(replace(CAST(packed AS TEXT), 'keeper', 'worker') AS BLOB) WHERE kind = 'operator'",
      1,
      1,
    ],
    ["an entry that is no entry", "UPDATE entry SET packed = zeroblob(length(packed)) WHERE kind = 'gauge'", 1, 0],
    ["an entry gone", "DELETE FROM entry WHERE n % 4294967296 = 6", 1, 0],
    ["a hash beside an entry lost", "UPDATE entry SET hash = zeroblob(32) WHERE kind = 'works'", 1, 1],
  ])(
    "is everything but %s, which is named; what comes after it in the chain stands apart",
    async (_, sql, gone, doubtful) => {
      const { path } = closedStore();
      const filed = await hashesOf(path);
      spoil(path, sql);
      const { made, members } = (await salvaged(path))!;
      expect(made.leftOut).toBe(gone);
      const ledger = ledgerOf(members);
      const beyond = linesOf(members["beyond.jsonl"]);
      for (const line of [...ledger, ...beyond]) expect(filed.has(sha(line))).toBe(true);
      expect(ledger.length + beyond.length).toBe(filed.size - gone);
      expect(made.entries).toBe(filed.size - gone);
      expect(linesOf(members["doubtful.jsonl"])).toHaveLength(doubtful);
      expect(members["damaged.txt"]).toMatch(/entry \d+/);
      expect(linesOf(members["csv/check.csv"]).length).toBe(26); // every check and the header; a replacement brings one
    },
  );

  it("can be taken over again as far as each chain holds", async () => {
    const { path } = closedStore();
    spoil(path, "DELETE FROM entry WHERE n % 4294967296 = 12");
    const { file, members } = (await salvaged(path))!;
    const other = storeInTemp();
    expect(importArchive(other, file, quietWatch)).toMatchObject({ added: 11 });
    expect(ledgerOf(members)).toHaveLength(11);
    expect(linesOf(members["beyond.jsonl"]).length).toBeGreaterThan(20);
  });

  it("leaves out readings that cannot be unpacked, and names them", async () => {
    const { path } = closedStore();
    spoil(path, "UPDATE waveform SET bytes = zeroblob(length(bytes)) WHERE n = (SELECT min(n) FROM waveform)");
    const { made, members } = (await salvaged(path))!;
    expect(made.leftOut).toBe(1);
    expect(members["damaged.txt"]).toContain("readings of entry");
  });

  it("is never more than was filed, and all that verify finds whole, whichever bit flips; nothing falls over", async () => {
    const { path } = closedStore();
    const filed = await hashesOf(path);
    const bytes = readFileSync(path);
    const spoilt = join(tempFolder(), "flipped.sqlite");
    const next = invented(20_261_125);
    let opened = 0;
    for (let i = 0; i < 60; i += 1) {
      const flipped = Buffer.from(bytes);
      const bit = Math.floor(next() * bytes.length * 8);
      flipped[bit >> 3]! ^= 1 << (bit & 7);
      for (const rest of ["-wal", "-shm"]) rmSync(`${spoilt}${rest}`, { force: true });
      writeFileSync(spoilt, flipped);
      const saved = await salvaged(spoilt).catch((cause: { code?: string }) => {
        if (cause.code !== "damaged" && !String(cause.code).startsWith("SQLITE_")) throw cause;
        return undefined; // refused in plain words
      });
      if (saved === undefined) continue;
      opened += 1;
      const lines = [...ledgerOf(saved.members), ...linesOf(saved.members["beyond.jsonl"])];
      for (const line of lines) expect(filed.has(sha(line)), `bit ${bit}`).toBe(true);
      expect(lines.length + saved.made.leftOut, `bit ${bit}`).toBeGreaterThanOrEqual(filed.size);
    }
    expect(opened).toBeGreaterThan(50);
  }, 60_000);

  it("is not what a plain export does by itself: that says the records are damaged, and leaves nothing behind", async () => {
    const { path } = closedStore();
    spoil(path, "UPDATE entry SET packed = zeroblob(length(packed)) WHERE kind = 'gauge'");
    const file = join(tempFolder(), "plain.zip");
    await expect(lookAt(path, (db) => exportArchive(db, { ...options, file }))).rejects.toMatchObject({
      code: "damaged",
      message: expect.stringContaining("Verify them"),
    });
  });
});
