import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it, onTestFinished } from "vitest";
import { openStore } from "../../../main/store/open.ts";
import { spindleList } from "../../../main/store/records/spindles.ts";
import type { StoreError } from "../../../main/store/StoreError.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { stillClock, storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

const { now } = stillClock();

function refusalOf(open: () => unknown): StoreError {
  try {
    open();
  } catch (cause) {
    return cause as StoreError;
  }
  throw new Error("nothing was refused");
}

describe("openStore", () => {
  it("makes folder and file for this user alone", () => {
    const store = storeInTemp({ path: join(tempFolder(), "new", "holdfast.sqlite") });
    expect(statSync(join(store.path, "..")).mode & 0o777).toBe(0o700);
    expect(statSync(store.path).mode & 0o777).toBe(0o600);
    expect(statSync(`${store.path}-wal`).mode & 0o777).toBe(0o600);
    expect(store.refusal).toBeUndefined();
  });

  it("writes durably: write-ahead log, full sync, strict tables, foreign keys", () => {
    const { db } = storeInTemp();
    expect(db.pragma("journal_mode", { simple: true })).toBe("wal");
    expect(db.pragma("synchronous", { simple: true })).toBe(2);
    expect(db.pragma("foreign_keys", { simple: true })).toBe(1);
    const tables = db.pragma("table_list") as { name: string; strict: number; type: string }[];
    const own = tables.filter(({ name, type }) => type === "table" && !name.startsWith("sqlite_"));
    expect(own.length).toBeGreaterThan(8);
    expect(own.filter(({ strict }) => strict !== 1)).toEqual([]);
  });

  it("refuses a second writer in plain words, and lets a reader in", () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    const refused = refusalOf(() => openStore({ path: store.path, now }));
    expect(refused.code).toBe("locked");
    expect(refused.message).toContain("Another Holdfast is running");
    const reader = openStore({ path: store.path, now, readOnly: true });
    onTestFinished(() => reader.close());
    expect(spindleList(reader.db).map((s) => s.spindle.name)).toEqual(["Larch 3"]);
    expect(reader.refusal?.code).toBe("readOnly");
    expect(refusalOf(() => reader.append([{ kind: "spindle", body: aSpindle() }])).code).toBe("readOnly");
  });

  it("lets the next one write when the first has closed", () => {
    const store = storeInTemp();
    store.close();
    expect(storeInTemp({ path: store.path }).refusal).toBeUndefined();
  });

  it("frees the lock when the writer is killed", async () => {
    const path = join(tempFolder(), "holdfast.sqlite");
    const source = `const { openStore } = await import(${JSON.stringify(join(process.cwd(), "main/store/open.ts"))});
      globalThis.store = openStore({ path: ${JSON.stringify(path)}, now: Date.now }); console.log("open"); setInterval(() => {}, 1000);`;
    const child = spawn(process.execPath, ["--input-type=module", "-e", source], {
      stdio: ["ignore", "pipe", "inherit"],
    });
    onTestFinished(() => void child.kill("SIGKILL"));
    await once(child.stdout, "data");
    expect(refusalOf(() => openStore({ path, now })).code).toBe("locked");
    child.kill("SIGKILL");
    await once(child, "exit");
    expect(storeInTemp({ path }).refusal).toBeUndefined();
  });

  it("keeps demo and real data apart, both ways, and changes nothing", () => {
    const real = storeInTemp();
    const demo = storeInTemp({ demo: true });
    for (const store of [real, demo]) {
      store.append([{ kind: "spindle", body: aSpindle() }]);
      store.close();
      const before = readFileSync(store.path);
      for (const readOnly of [true, false]) {
        const refused = refusalOf(() => openStore({ path: store.path, now, demo: !store.demo, readOnly }));
        expect(refused.code).toBe("demoMismatch");
      }
      expect(readFileSync(store.path).equals(before)).toBe(true);
    }
  });

  it("refuses a newer program's file and leaves it untouched to the byte", () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    store.db.pragma("user_version = 99");
    store.close();
    const before = readFileSync(store.path);
    for (const readOnly of [true, false]) {
      const refused = refusalOf(() => openStore({ path: store.path, now, readOnly }));
      expect(refused.code).toBe("newer");
      expect(refused.message).toContain("newer Holdfast");
    }
    expect(readFileSync(store.path).equals(before)).toBe(true);
  });

  it("says so when there is nothing to read", () => {
    const path = join(tempFolder(), "none.sqlite");
    expect(refusalOf(() => openStore({ path, now, readOnly: true })).code).toBe("notFound");
  });

  it.each([
    ["a text file", Buffer.from("spindle;force\n1;20\n".repeat(500))],
    ["noise", Buffer.from(Array.from({ length: 8192 }, (_, i) => (i * 167 + 13) & 0xff))],
  ])("refuses %s and leaves it untouched", (_, bytes) => {
    const path = join(tempFolder(), "holdfast.sqlite");
    writeFileSync(path, bytes);
    for (const readOnly of [true, false])
      expect(refusalOf(() => openStore({ path, now, readOnly })).code).toBe("damaged");
    expect(readFileSync(path).equals(bytes)).toBe(true);
  });

  it("refuses another program's database", () => {
    const path = join(tempFolder(), "holdfast.sqlite");
    const other = new Database(path);
    other.exec("CREATE TABLE address (name TEXT)");
    other.close();
    expect(refusalOf(() => openStore({ path, now })).code).toBe("damaged");
  });

  it("continues its own chain on the same computer and starts another on the next", () => {
    const store = storeInTemp({ machine: "first" });
    const first = store.origin;
    store.append([{ kind: "spindle", body: aSpindle() }]);
    store.close();
    const again = storeInTemp({ path: store.path, machine: "first" });
    expect(again.origin).toBe(first);
    again.close();
    const moved = storeInTemp({ path: store.path, machine: "second" });
    expect(moved.origin).not.toBe(first);
    const [filed] = moved.append([{ kind: "spindle", body: aSpindle({ name: "Larch 4" }) }]);
    expect(filed).toMatchObject({ seq: 1, origin: moved.origin });
  });

  it("finishes what a crash left half made: an empty file becomes a new store", () => {
    const path = join(tempFolder(), "holdfast.sqlite");
    writeFileSync(path, "");
    expect(storeInTemp({ path }).append([{ kind: "spindle", body: aSpindle() }])).toHaveLength(1);
  });
});
