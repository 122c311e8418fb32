import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import type { Store } from "../../../main/store/Store.ts";
import { captureIo } from "../../support/captureIo.ts";
import { fillStore } from "../../support/fullStore.ts";
import { storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

function filled(demo = false): Store {
  const store = storeInTemp({ demo });
  fillStore(store, 8);
  return store;
}

describe("holdfast verify", () => {
  it("says that nothing is damaged, beside a running program, in words and as JSON", async () => {
    const store = filled();
    const words = captureIo();
    expect(await runCli(["verify", "--data", store.path, "--rebuild"], words.io)).toBe(0);
    expect(words.text()).toContain("Nothing is damaged.");
    expect(words.text()).toContain(`chain ${store.origin}`);
    const json = captureIo();
    expect(await runCli(["verify", "--data", store.path, "--json"], json.io)).toBe(0);
    expect(JSON.parse(json.text())).toMatchObject({ damaged: [], damagedCount: 0, waveforms: 24 });
  });

  it("names the first damaged entry and ends with 3", async () => {
    const store = filled();
    store.db.exec("UPDATE entry SET hash = zeroblob(32) WHERE kind = 'works'");
    const { io, text } = captureIo();
    expect(await runCli(["verify", "--data", store.path, "--json"], io)).toBe(3);
    const report = JSON.parse(text());
    expect(report.damaged[0]).toMatchObject({ what: "entry", seq: 1, fault: "altered" });
    expect(report.chains[0].firstDamaged).toBe(1);
    const words = captureIo();
    expect(await runCli(["verify", "--data", store.path], words.io)).toBe(3);
    expect(words.text()).toContain("entry 1 is the first damaged");
  });

  it("makes damaged lists anew when told to, but not while the program holds the file", async () => {
    const store = filled();
    store.db.exec("UPDATE check_row SET value_n = 1");
    const refused = captureIo();
    expect(await runCli(["verify", "--repair", "--data", store.path], refused.io)).toBe(2);
    expect(refused.errors()).toContain("Another Holdfast is running");
    store.close();
    expect(await runCli(["verify", "--data", store.path], captureIo().io)).toBe(3);
    expect(await runCli(["verify", "--repair", "--data", store.path], captureIo().io)).toBe(0);
  });

  it("ends with 3 for a file that cannot be read at all, and for one cut short", async () => {
    const path = join(tempFolder(), "noise.sqlite");
    writeFileSync(path, "noise ".repeat(2_000));
    const { io, text } = captureIo();
    expect(await runCli(["verify", "--data", path, "--json"], io)).toBe(3);
    expect(JSON.parse(text()).damaged).toHaveLength(1);
    const store = filled();
    store.close();
    writeFileSync(path, readFileSync(store.path).subarray(0, 40_960));
    const cut = captureIo();
    expect(await runCli(["verify", "--data", path], cut.io)).toBe(3);
  });

  it.each([
    [["--data", "/nowhere/holdfast.sqlite"], "there is no data file"],
    [["--surplus"], "Unknown option"],
  ])("ends with 2 and one line for %j", async (args, said) => {
    const { io, errors } = captureIo();
    expect(await runCli(["verify", ...args], io)).toBe(2);
    expect(errors()).toContain(said);
    expect(errors().trim().split("\n")).toHaveLength(1);
  });

  it("takes the demo's file for the demo only", async () => {
    const store = filled(true);
    const { io, errors } = captureIo();
    expect(await runCli(["verify", "--data", store.path], io)).toBe(2);
    expect(errors()).toContain("invented data of the demo");
    expect(await runCli(["verify", "--demo", "--data", store.path], captureIo().io)).toBe(0);
  });
});
