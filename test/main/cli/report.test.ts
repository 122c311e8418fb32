import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import { aCheck } from "../../support/aCheck.ts";
import { captureIo } from "../../support/captureIo.ts";
import { fillStore } from "../../support/fullStore.ts";
import { provedStore } from "../../support/provedStore.ts";
import { storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

function filled() {
  const store = storeInTemp();
  fillStore(store, 6);
  return store;
}

describe("holdfast report proof", () => {
  it.each([
    ["report.pdf", /^%PDF-/],
    ["report.csv", /^kind,run,/],
    ["report.json", /^\{\n {2}"format": "holdfast-proof"/],
  ])("writes %s of a proof", async (name, begins) => {
    const { store, left } = provedStore();
    const which = name.endsWith(".json") ? left.proofId : "gauge"; // whose newest it is
    const out = join(tempFolder(), name);
    const { io, text } = captureIo();
    expect(
      await runCli(["report", "proof", which, "--out", out, "--data", store.path, "--json", "--language", "de"], io),
    ).toBe(0);
    expect(JSON.parse(text())).toMatchObject({ file: out, what: "proof", proofId: left.proofId, language: "de" });
    expect(readFileSync(out).subarray(0, 40).toString("latin1")).toMatch(begins);
  });

  it.each([
    ["Oak", "there is no gauge Oak"],
    ["01900000-0000-7000-8000-0000000aaaaa", "no such proof"],
  ])("ends with 2 for %s", async (which, said) => {
    for (const name of ["report.pdf", "report.csv"]) {
      const { io, errors } = captureIo();
      const out = join(tempFolder(), name);
      expect(await runCli(["report", "proof", which, "--out", out, "--data", provedStore().store.path], io)).toBe(2);
      expect(errors()).toContain(said);
    }
  });
});

describe("holdfast report", () => {
  it.each([[["check", aCheck({ seed: 2 }).checkId]], [["spindle", "larch 2"]], [["works", "--since", "2024-01-01"]]])(
    "writes a PDF of %j",
    async (what) => {
      const out = join(tempFolder(), "report.pdf");
      const { io, text } = captureIo();
      expect(await runCli(["report", ...what, "--out", out, "--data", filled().path, "--json"], io)).toBe(0);
      expect(JSON.parse(text())).toMatchObject({ file: out, what: what[0] });
      expect(readFileSync(out).subarray(0, 5).toString("latin1")).toBe("%PDF-");
    },
  );

  it.each([
    [["check", "none"], "say what of"],
    [["spindle", "Oak"], "no spindle Oak"],
    [["works", "--since", "May"], "--since"],
    [["works", "--paper", "A5"], "A4 or Letter"],
    [["check", "01900000-0000-7000-8000-0000000aaaaa"], "no such check"],
  ])("ends with 2 and one line for %j", async (args, said) => {
    const { io, errors } = captureIo();
    const out = join(tempFolder(), "report.pdf");
    expect(await runCli(["report", ...args, "--out", out, "--data", filled().path], io)).toBe(2);
    expect(errors()).toContain(said);
    expect(errors().trim().split("\n")).toHaveLength(1);
  });
});
