import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeInBrowser } from "./Browser.ts";
import type { Call } from "./HoldfastProcess.ts";
import { demoInBrowser, type InBrowser } from "./programInBrowser.ts";

describeInBrowser("the trend of a spindle in a browser", () => {
  let page: Page;
  let end: InBrowser["end"] | undefined;
  let complaints: string[];
  const canvas = () => page.locator(".trend canvas");
  /** Length of what is shown, in days. */
  const shown = async () => {
    const [, from, to] = /shown from (.*) to (.*)\. Arrow/.exec((await canvas().getAttribute("aria-label"))!)!;
    return (Date.parse(to!) - Date.parse(from!)) / 86_400_000;
  };

  beforeAll(async () => {
    let call: Call;
    ({ page, call, complaints, end } = await demoInBrowser({ viewport: { width: 1280, height: 1000 } }));
    const { spindleId } = (await call("spindles.list")).find((row) => row.spindle.name === "Mill 2")!.spindle;
    await page.evaluate((id) => {
      location.hash = `#/spindles/${id}`;
    }, spindleId);
    await canvas().waitFor();
  }, 90_000);
  afterAll(async () => {
    await end?.();
  });

  it("comes nearer by dragging without opening a check, and by the wheel once it has the focus", async () => {
    const whole = await shown();
    const at = page.url();
    const box = (await canvas().boundingBox())!;
    const y = box.y + box.height / 2;
    await page.mouse.move(box.x + box.width * 0.4, y);
    await page.mouse.wheel(0, -200); // the page scrolls, the picture stays: it has no focus yet
    expect(await shown()).toBe(whole);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.6, y, { steps: 6 });
    await page.mouse.up();
    await expect.poll(shown).toBeLessThan(whole * 0.35);
    expect(page.url()).toBe(at);
    const near = await shown();
    await page.mouse.wheel(0, 200);
    await expect.poll(shown).toBeGreaterThan(near);
    await page.keyboard.press("0");
    await expect.poll(shown).toBe(whole);
  });

  it("is saved as PNG and as SVG, named by spindle and date", async () => {
    const save = async (kind: "PNG" | "SVG") => {
      const [file] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: `Save as ${kind}` }).click(),
      ]);
      expect(file.suggestedFilename()).toMatch(new RegExp(`^Mill-2-\\d{4}-\\d\\d-\\d\\d\\.${kind.toLowerCase()}$`));
      return readFileSync(await file.path());
    };
    const png = await save("PNG");
    expect(png.subarray(1, 4).toString("latin1")).toBe("PNG");
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([2400, 1280]);
    expect((await save("SVG")).toString("utf8")).toMatch(/^<svg xmlns[\s\S]*<title>Mill 2 · HSK-A 63<\/title>/);
  });

  it("goes by tool changes and back without a complaint", async () => {
    await page.getByLabel("By tool changes").click();
    await expect.poll(async () => canvas().getAttribute("aria-label")).toContain("changes to");
    await page.getByLabel("By date").click();
    await expect.poll(shown).toBeGreaterThan(300);
    expect(complaints).toEqual([]);
  });
});
