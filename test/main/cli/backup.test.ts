import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import { captureIo } from "../../support/captureIo.ts";
import { fillStore } from "../../support/fullStore.ts";
import { storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

describe("holdfast backup and restore", () => {
  it("bring the records to another place, whole, and walk them there", async () => {
    const store = storeInTemp();
    fillStore(store, 8);
    const folder = tempFolder();
    const made = captureIo();
    expect(await runCli(["backup", folder, "--data", store.path, "--json"], made.io)).toBe(0);
    const { file, entries, damaged } = JSON.parse(made.text());
    expect(damaged).toEqual([]);
    expect(readdirSync(folder).map((name) => join(folder, name))).toEqual([file]);
    const to = join(folder, "restored.sqlite");
    const restored = captureIo();
    expect(await runCli(["restore", file, "--data", to, "--json"], restored.io)).toBe(0);
    expect(JSON.parse(restored.text())).toMatchObject({ file: to, entries, damaged: [] });
    expect(await runCli(["verify", "--data", to, "--rebuild"], captureIo().io)).toBe(0);
  });

  it("say in words what they did", async () => {
    const store = storeInTemp();
    fillStore(store, 3);
    const folder = tempFolder();
    const made = captureIo();
    expect(await runCli(["backup", folder, "--data", store.path], made.io)).toBe(0);
    expect(made.text()).toContain("opened and walked: nothing is damaged");
    const restored = captureIo();
    const [name] = readdirSync(folder);
    expect(await runCli(["restore", join(folder, name!), "--data", join(folder, "new.sqlite")], restored.io)).toBe(0);
    expect(restored.text()).toContain("the same to the last entry");
  });

  it("end with 3 where the records are damaged", async () => {
    const store = storeInTemp();
    fillStore(store, 3);
    store.db.exec("UPDATE entry SET hash = zeroblob(32) WHERE kind = 'works'");
    const folder = tempFolder();
    const made = captureIo();
    expect(await runCli(["backup", folder, "--data", store.path], made.io)).toBe(3);
    expect(made.text()).toContain("The records themselves are damaged");
    const [name] = readdirSync(folder);
    const restored = captureIo();
    expect(await runCli(["restore", join(folder, name!), "--data", join(folder, "new.sqlite")], restored.io)).toBe(3);
    expect(restored.errors()).toContain("Nothing was restored");
    expect(readdirSync(folder)).toEqual([name]);
  });

  it.each([
    [["backup"], "name one folder"],
    [["backup", "/nowhere/stick"], "Was the stick taken out"],
    [["restore"], "name one backup"],
    [["restore", "/nowhere/file.sqlite"], "say where to with --data NEW"],
    [["restore", "/nowhere/file.sqlite", "--data", "/nowhere/new.sqlite"], "There is no backup"],
  ])("end with 2 and one line for %j", async (args, said) => {
    const store = storeInTemp();
    const { io, errors } = captureIo();
    const data = args[0] === "backup" ? ["--data", store.path] : [];
    expect(await runCli([...args, ...data], io)).toBe(2);
    expect(errors()).toContain(said);
    expect(errors().trim().split("\n")).toHaveLength(1);
  });
});
