import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeInBrowser, launch } from "./Browser.ts";
import { type Call, HoldfastProcess, pageCalls } from "./HoldfastProcess.ts";
import { misfitsOf } from "./misfits.ts";

/**
 * WCAG 2.2, 1.4.10 Reflow: 320 CSS pixels wide is 1280 at 400 %, and 640 is 1280 at 200 % (1.4.4). Tables of figures and charts may
 * scroll by themselves; nothing else, and no page, scrolls sideways.
 */
const widths = [320, 400, 640, 800, 1280] as const;

describeInBrowser("every place, from 320 to 1280 pixels wide", () => {
  let browser: Browser;
  let program: HoldfastProcess;
  let call: Call;
  let places: readonly string[];
  const home = mkdtempSync(join(tmpdir(), "holdfast-reflow-"));

  beforeAll(async () => {
    browser = await launch();
    program = new HoldfastProcess(home, ["--demo"]);
    call = await pageCalls(await program.address());
    const { spindleId } = (await call("spindles.list")).find(({ spindle }) => spindle.name === "Mill 3")!.spindle;
    const { checkId } = (await call("checks.list", { spindleId, limit: 1 })).rows[0]!;
    const gauges = await call("gauges.list");
    const { gaugeId } = gauges.find((row) => row.proofState === "off")!.gauge;
    const { adapterId } = (await call("adapters.list"))[0]!.adapter;
    const { proofId } = (await call("proofs.list", { gaugeId })).rows[0]!;
    places = [
      "dock",
      "spindles",
      `spindles/${spindleId}`,
      `spindles/${spindleId}/checks/${checkId}`,
      "rounds",
      "gauges",
      `gauges/${gaugeId}`,
      `gauges/${gaugeId}/prove`,
      `gauges/proofs/${proofId}`,
      `gauges/proofs/${proofId}/affected`,
      `gauges/factor/${adapterId}`,
      "records",
      "setup",
      "help",
      "measure", // where the page opens, so not the first to be gone to
      "help/statistics",
      "help/glossary",
    ];
  }, 90_000);
  afterAll(async () => {
    await browser?.close();
    await program?.end();
    rmSync(home, { recursive: true, force: true });
  });

  it.each([
    ["en", widths],
    ["de", [320, 640]], // the longer words, where they are narrowest
  ] as const)(
    "fits in %s",
    async (language, some) => {
      await call("settings.save", { language });
      const page = await browser.newPage();
      await page.goto(await program.address());
      await page.waitForSelector("main h1");
      const misfits: string[] = [];
      for (const place of places) {
        await page.evaluate((hash) => {
          document.querySelector("main h1")!.setAttribute("data-before", "");
          location.hash = hash;
        }, `#/${place}`);
        // Help is one screen for all of its pages: its heading stays.
        if (!place.startsWith("help/")) await page.waitForSelector("main h1:not([data-before])");
        await page.waitForFunction(() => document.querySelector("main > [role=status]") === null);
        await page.evaluate(() => document.fonts.ready);
        for (const width of some) {
          await page.setViewportSize({ width, height: 800 });
          await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
          for (const one of await misfitsOf(page))
            misfits.push(`${place.replace(/[0-9a-f-]{36}/g, "…")} at ${width}: ${one}`);
        }
      }
      await page.close();
      expect(misfits).toEqual([]);
    },
    90_000,
  );
});
