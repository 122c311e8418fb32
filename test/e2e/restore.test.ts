import { existsSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openReader } from "../../main/store/openReader.ts";
import { complaintsOf, describeInBrowser, launch } from "./Browser.ts";
import { type Call, HoldfastProcess, pageCalls } from "./HoldfastProcess.ts";

describeInBrowser("the way back from a copy, in the whole program", () => {
  const home = mkdtempSync(join(tmpdir(), "holdfast-restore-"));
  const stick = join(home, "stick");
  let browser: Browser;
  let program: HoldfastProcess;
  let page: Page;
  let call: Call;
  let complaints: string[];
  let spindleId: string;

  const file = async (text: string) => {
    const { seriesId } = (await call("state.snapshot")).draft;
    await call("series.tag", { seriesId, spindleId });
    await call("series.type", { seriesId, text });
    await call("series.accept", { seriesId, spindleId });
  };
  const valuesIn = (path: string) => {
    const db = openReader(path);
    try {
      return db.prepare("SELECT value_n FROM check_row ORDER BY n").pluck().all();
    } finally {
      db.close();
    }
  };

  beforeAll(async () => {
    mkdirSync(stick);
    browser = await launch();
    program = new HoldfastProcess(home);
    call = await pageCalls(await program.address());
    await call("settings.save", { language: "en", sound: false });
    const place = { machine: "Mill 3", area: "", taper: "HSK-A63", state: "inUse" as const };
    spindleId = (await call("spindles.save", { name: "Mill 3", ...place, limits: { minimumN: 14_400 } })).spindle
      .spindleId;
    await file("17.92 kN");
    page = await browser.newPage({ viewport: { width: 1280, height: 800 }, locale: "en-GB" });
    complaints = complaintsOf(page);
    await page.goto(await program.address());
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
    await program?.end();
    rmSync(home, { recursive: true, force: true });
  });

  it("compares first, changes nothing until it is said twice, then puts the copy in place and keeps the old file", async () => {
    await page.getByRole("link", { name: "Setup" }).click();
    await page.getByRole("region", { name: "A copy a day" }).getByRole("textbox").first().fill(stick);
    await page.keyboard.press("Enter");
    await page
      .getByText(/^Last copy: .*entries walked, all whole/)
      .first()
      .waitFor();
    await expect.poll(async () => (await call("backup.list", { folder: stick })).length, { timeout: 15_000 }).toBe(1);
    await file("16.80 kN"); // after the copy

    await page.getByRole("link", { name: "Records" }).click();
    await page.getByRole("button", { name: "Show the copies" }).click();
    const compare = page.getByRole("button", { name: /^Restore beside and compare: / });
    await compare.click();
    await page.getByText(/The copy is whole: \d+ entries/).waitFor();
    await page.getByText(/^\d+ entr(y|ies) of today's records are not in it, 1 of them checks/).waitFor();
    await page.getByRole("button", { name: "Leave everything as it is" }).click();
    await page.getByText(/The copy is whole/).waitFor({ state: "detached" });
    expect(valuesIn(program.dataFile)).toEqual([17_920, 16_800]);

    await compare.click();
    await page.getByRole("button", { name: "Put it in place …" }).click();
    const sure = page.getByRole("dialog", { name: "Put the copy in the place of the records?" });
    await sure.getByText(/may stand as good whose last check said stop/).waitFor();
    await sure.getByRole("button", { name: "Cancel" }).click();
    expect(valuesIn(program.dataFile)).toEqual([17_920, 16_800]);
    await page.getByRole("button", { name: "Put it in place …" }).click();
    await sure.getByRole("button", { name: "Put the copy in place" }).click();

    const kept = page.getByText(/^Restored\. The file in use before lies at /);
    await kept.waitFor();
    const old = (await kept.textContent())!.replace(/^.* lies at /, "").trim();
    expect(dirname(old)).toBe(home);
    expect(existsSync(old)).toBe(true);
    expect(valuesIn(old)).toEqual([17_920, 16_800]);
    expect(valuesIn(program.dataFile)).toEqual([17_920]);
    // The program works on with the copy, and the next check follows in it.
    call = await pageCalls(await program.address());
    await file("17.10 kN");
    expect(valuesIn(program.dataFile)).toEqual([17_920, 17_100]);
    expect(complaints).toEqual([]);
  }, 60_000);
});
