import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it, onTestFinished } from "vitest";
import { type Migration, migrate, schemaVersion } from "../../../main/store/migrate.ts";
import { steps } from "../../../main/store/migrations/steps.ts";
import { schemaOf } from "../../../main/store/schemaDamage.ts";
import { tempFolder } from "../../support/storeInTemp.ts";

const one: Migration = {
  version: 1,
  up: (db) => db.exec("CREATE TABLE a (x TEXT) STRICT; INSERT INTO a VALUES ('kept')"),
};
const two: Migration = { version: 2, up: (db) => db.exec("ALTER TABLE a ADD COLUMN y TEXT") };
const failing: Migration = {
  version: 3,
  up: (db) => {
    db.exec("CREATE TABLE half (x TEXT) STRICT");
    throw new Error("the step went wrong");
  },
};

function aFile() {
  const path = join(tempFolder(), "file.sqlite");
  const db = new Database(path);
  onTestFinished(() => void db.close());
  const copies: number[] = [];
  const copyTo = (version: number) => {
    copies.push(version);
    return `${path}.copy-${version}`;
  };
  return { db, path, copies, copyTo };
}

describe("migrate", () => {
  it("numbers the shipped steps from one, without a gap", () => {
    expect(steps.map((step) => step.version)).toEqual(steps.map((_, i) => i + 1));
  });

  it("leaves the schema that is written down", () => {
    const { db, copyTo } = aFile();
    migrate(db, steps, copyTo);
    const text = schemaOf(db)
      .map(({ type, name, sql }) => `${type} ${name}\n${(sql ?? "").replace(/^ {6}/gm, "")}\n`)
      .join("\n");
    const written = join(import.meta.dirname, "schema.txt");
    expect(text).toBe(readFileSync(written, "utf8"));
  });

  it("copies nothing for a new file, and runs each step once", () => {
    const { db, copies, copyTo } = aFile();
    migrate(db, [one, two], copyTo);
    migrate(db, [one, two], copyTo);
    expect(schemaVersion(db)).toBe(2);
    expect(copies).toEqual([]);
  });

  it("copies a file that holds something before its first step, as it was", () => {
    const { db, path, copies, copyTo } = aFile();
    migrate(db, [one], copyTo);
    migrate(db, [one, two], copyTo);
    expect(copies).toEqual([1]);
    const copy = new Database(`${path}.copy-1`);
    onTestFinished(() => void copy.close());
    expect(schemaVersion(copy)).toBe(1);
    expect(copy.prepare("SELECT * FROM a").all()).toEqual([{ x: "kept" }]);
    expect(db.prepare("SELECT * FROM a").all()).toEqual([{ x: "kept", y: null }]);
  });

  it("keeps the steps that worked and nothing of the one that did not", () => {
    const { db, copyTo } = aFile();
    migrate(db, [one], copyTo);
    expect(() => migrate(db, [one, two, failing], copyTo)).toThrow("the step went wrong");
    expect(schemaVersion(db)).toBe(2);
    expect(schemaOf(db).map((item) => item.name)).toEqual(["a"]);
  });

  it("refuses a file from a newer program", () => {
    const { db, path, copyTo } = aFile();
    migrate(db, [one, two], copyTo);
    expect(() => migrate(db, [one], copyTo)).toThrow(expect.objectContaining({ code: "newer" }));
    expect(schemaVersion(db)).toBe(2);
    expect(existsSync(`${path}.copy-2`)).toBe(false);
  });
});
