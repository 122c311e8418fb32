import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import { captureIo } from "../../support/captureIo.ts";
import { coreInTemp } from "../../support/coreInTemp.ts";
import { roundWorks } from "../../support/roundWorks.ts";

let folder = "";
let data = "";
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "holdfast-cli-"));
  const core = await coreInTemp({ folder });
  await core.call("works.save", { ...(await core.call("state.snapshot")).works, name: "Trial works" });
  await roundWorks(core, [10, 20]);
  data = core.dataFile;
  await core.close();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function run(...args: string[]) {
  const { io, text, errors } = captureIo();
  return { code: await runCli([...args, "--data", data], io), text: text(), errors: errors() };
}

describe("holdfast calendar", () => {
  it("prints the due dates as iCalendar, in the language asked for", async () => {
    const { code, text } = await run("calendar", "--language", "de");
    expect(code).toBe(0);
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\n/);
    expect(text.match(/BEGIN:VEVENT/g)).toHaveLength(2);
    expect(text).toContain("SUMMARY:Spannkraft messen: Mill 1");
  });

  it("writes only where told, and lists the same as JSON", async () => {
    const out = join(folder, "due.ics");
    const { code, text } = await run("calendar", "--out", out, "--json");
    expect(code).toBe(0);
    expect(JSON.parse(text).due).toHaveLength(2);
    expect(readFileSync(out, "utf8")).toContain("END:VCALENDAR");
  });

  it("refuses a language it does not speak, in one line", async () => {
    const { code, errors } = await run("calendar", "--language", "fr");
    expect(code).toBe(2);
    expect(errors).toBe("holdfast calendar: --language must be en or de, got fr\n");
  });
});

describe("holdfast labels", () => {
  it("writes a PDF and says how many labels it has", async () => {
    const out = join(folder, "labels.pdf");
    const { code, text } = await run("labels", "adapters", "--size", "small", "--out", out, "--json");
    expect(code).toBe(0);
    expect(JSON.parse(text)).toEqual({ file: out, labels: 2 });
    expect(readFileSync(out).subarray(0, 5).toString()).toBe("%PDF-");
  });

  it.each([
    [["labels"], "--out"],
    [["labels", "tools", "--out", "x.pdf"], "spindles, adapters, gauges"],
    [["labels", "--out", "x.pdf", "--size", "huge"], "small, medium, large"],
    [["labels", "--out", "x.pdf", "--skip", "two"], "--skip"],
  ])("refuses %j and says what is wanted", async (args, wanted) => {
    const { code, errors } = await run(...args);
    expect(code).toBe(2);
    expect(errors).toContain(wanted);
  });
});
