import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeInBrowser } from "./Browser.ts";
import type { Call } from "./HoldfastProcess.ts";
import { listenToRegions, type Said, saidSince } from "./liveRegions.ts";
import { demoInBrowser, type InBrowser } from "./programInBrowser.ts";

/** WCAG 2.2, 4.1.3 Status Messages: measured by ear, without a word too many. */
describeInBrowser("by ear", () => {
  let page: Page;
  let call: Call;
  let end: InBrowser["end"] | undefined;
  beforeAll(async () => {
    ({ page, call, end } = await demoInBrowser());
    const spindle = (await call("spindles.list")).find((row) => row.spindle.name === "Mill 2")!.spindle;
    const { draft } = await call("state.snapshot");
    await call("series.tag", { seriesId: draft.seriesId, spindleId: spindle.spindleId });
    await call("link.open", { source: { kind: "simulated" } });
    await page.evaluate(() => {
      location.hash = "#/measure";
    });
    await page.locator(".readout .state", { hasText: "at rest" }).waitFor();
    await page.waitForTimeout(2_000);
    await listenToRegions(page);
  }, 90_000);
  afterAll(async () => {
    await end?.();
  });

  /** What is said until there is so much of it, and in the second after. */
  async function saidUntil(count: number): Promise<Said[]> {
    const said: Said[] = [];
    for (let i = 0; i < 100 && said.length < count; i += 1) {
      await page.waitForTimeout(100);
      said.push(...(await saidSince(page)));
    }
    await page.waitForTimeout(1_000);
    return [...said, ...(await saidSince(page))];
  }

  it("is quiet while nothing happens, whatever the figure does", async () => {
    await page.waitForTimeout(3_000);
    expect(await saidSince(page)).toEqual([]);
  }, 30_000);

  it("hears each clamping once, with its force and the verdict, and of the force itself only that it holds and rests", async () => {
    for (const number of [1, 2, 3]) {
      await page.keyboard.press("c");
      await page.locator(".readout .state", { hasText: "holding" }).waitFor();
      const said = await saidUntil(1); // that it holds
      await page.keyboard.press("c");
      said.push(...(await saidUntil(2)), ...(await saidUntil(0)));
      expect(said.filter(({ mounted }) => mounted)).toEqual([]);
      const texts = said.map(({ text }) => text);
      expect(texts.toSorted()).toEqual([
        expect.stringMatching(new RegExp(`^Clamping ${number}: 1[78]\\.\\d+.kN\\. \\w+$`)),
        "at rest",
        "holding",
      ]);
    }
  }, 90_000);

  it("hears what was filed to which spindle", async () => {
    await page.keyboard.press(" ");
    expect(await saidUntil(1)).toEqual([
      { text: expect.stringMatching(/^18\.\d+.kN filed to Mill 2$/), mounted: false },
    ]);
  }, 30_000);
});
