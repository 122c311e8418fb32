import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import { writeMembers } from "../../support/archives.ts";
import { captureIo } from "../../support/captureIo.ts";
import { fillStore } from "../../support/fullStore.ts";
import { storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

describe("holdfast export and import", () => {
  it("carries all records from one file to another, beside a running program", async () => {
    const store = storeInTemp();
    fillStore(store, 5);
    const file = join(tempFolder(), "all.zip");
    const out = captureIo();
    expect(await runCli(["export", file, "--data", store.path, "--json"], out.io)).toBe(0);
    const made = JSON.parse(out.text());
    expect(made).toMatchObject({ file, waveforms: 15 });
    const to = join(tempFolder(), "new.sqlite");
    const taken = captureIo();
    expect(await runCli(["import", file, "--data", to, "--json"], taken.io)).toBe(0);
    expect(JSON.parse(taken.text())).toMatchObject({ added: made.entries, heads: made.heads });
    expect(await runCli(["verify", "--data", to], captureIo().io)).toBe(0);
  });

  it("does not write into a file the program has open", async () => {
    const store = storeInTemp();
    fillStore(store, 2);
    const file = join(tempFolder(), "all.zip");
    await runCli(["export", file, "--data", store.path], captureIo().io);
    const { io, errors } = captureIo();
    expect(await runCli(["import", file, "--data", store.path], io)).toBe(2);
    expect(errors().trim().split("\n")).toHaveLength(1);
  });

  it("ends with 3 for an archive that does not hold and 2 for wrong use, in one line", async () => {
    const bad = writeMembers(join(tempFolder(), "bad.zip"), { "x.txt": "x" });
    const to = join(tempFolder(), "new.sqlite");
    const damaged = captureIo();
    expect(await runCli(["import", bad, "--data", to], damaged.io)).toBe(3);
    expect(damaged.errors()).toContain("no archive of Holdfast");
    const gone = captureIo();
    expect(await runCli(["import", "/nowhere.zip", "--data", to], gone.io)).toBe(2);
    const nameless = captureIo();
    expect(await runCli(["export"], nameless.io)).toBe(2);
    expect(existsSync("all.zip")).toBe(false);
  });
});
