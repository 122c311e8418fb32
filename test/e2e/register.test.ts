import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { complaintsOf, describeInBrowser, launch } from "./Browser.ts";
import { HoldfastProcess, pageCalls } from "./HoldfastProcess.ts";

/** As a German spreadsheet saves it: semicolons, decimal commas, UTF-16 with a byte-order mark. */
const german = Buffer.from(
  "\uFEFFSpindel;Maschine;Halle;Kegel;Mindestkraft;Sollkraft\r\n" +
    "Fräse 3 🔩;Fräse 3;Halle B;HSK-A63;14,4;18\r\n" +
    '"Fräse 4; links";Fräse 4;Halle B;SK 40;12,25;15,5\r\n',
  "utf16le",
);

describeInBrowser("the register in the whole program", () => {
  let browser: Browser;
  let page: Page;
  let home: string;
  let program: HoldfastProcess;
  let complaints: string[];

  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });
  beforeEach(async () => {
    home = mkdtempSync(join(tmpdir(), "holdfast-e2e-"));
    program = new HoldfastProcess(home);
    page = await browser.newPage({ viewport: { width: 1280, height: 800 }, locale: "en-GB" });
    complaints = complaintsOf(page);
  });
  afterEach(async () => {
    await page.close();
    await program.end();
    rmSync(home, { recursive: true, force: true });
  });

  async function register() {
    const call = await pageCalls(await program.address());
    const limits = { minimumN: 14_400, maximumN: 20_000 };
    const place = { machine: "Mill 3", area: "hall A", taper: "HSK-A63", state: "inUse" as const };
    const { spindle } = await call("spindles.save", { name: "Mill 3", ...place, limits });
    return { call, spindle };
  }

  it("imports a list out of a German spreadsheet, asked only for the unit, and shows it at once", async () => {
    const { call } = await register();
    await page.goto(await program.address());
    await page.getByRole("link", { name: "Spindles" }).click();
    await page.getByRole("button", { name: "Import a list" }).click();
    await page.getByLabel("File").setInputFiles({ name: "Liste.csv", mimeType: "text/csv", buffer: german });
    await page.getByText("2 rows, a semicolon between the cells, UTF-16LE.").waitFor();
    await page.getByLabel("Unit of the forces").selectOption("kN");
    await page.getByRole("button", { name: "Import 2 rows" }).click();
    await page.getByText("2 rows imported.").waitFor();
    await page.getByRole("dialog").getByRole("button", { name: "Close" }).click();
    await page.getByRole("link", { name: "Fräse 4; links" }).waitFor();
    const rows = await call("spindles.list");
    expect(rows.map(({ spindle }) => [spindle.name, spindle.limits]).sort()).toEqual([
      ["Fräse 3 🔩", { minimumN: 14_400, nominalN: 18_000 }],
      ["Fräse 4; links", { minimumN: 12_250, nominalN: 15_500 }],
      ["Mill 3", { minimumN: 14_400, maximumN: 20_000 }],
    ]);
    expect(complaints).toEqual([]);
  });

  it("shows today's word beside the filed verdict after the limits have changed, here and under Records", async () => {
    const { call, spindle } = await register();
    const { seriesId } = (await call("state.snapshot")).draft;
    await call("series.tag", { seriesId, spindleId: spindle.spindleId });
    await call("series.type", { seriesId, text: "17.92 kN" });
    const { row } = await call("series.accept", { seriesId, spindleId: spindle.spindleId });
    await call("spindles.save", { ...spindle, limits: { minimumN: 19_000, maximumN: 20_000 } });
    await page.goto(await program.address());
    await page.getByRole("link", { name: "Records" }).click();
    await page.getByRole("button", { name: "Go through all checks" }).click();
    await page.getByText("1 of 1 checks would be judged otherwise today.").waitFor();
    await page.getByRole("table", { name: "The gravest first" }).getByRole("link").click();
    await page.getByRole("heading", { name: "What today's limits would say" }).waitFor();
    const today = page.locator("section", { hasText: "What today's limits would say" });
    expect(await today.textContent()).toMatch(/Stop\. .*Not as it was filed: the spindle's limits\./);
    expect((await call("checks.get", { checkId: row.checkId })).check.verdict).toBe("good");
    expect(complaints).toEqual([]);
  });
});
