import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { WEDGE_GAP_MS } from "../../renderer/ui/keys/WedgeReader.ts";
import { describeInBrowser } from "./Browser.ts";
import type { Call } from "./HoldfastProcess.ts";
import { demoInBrowser, type InBrowser } from "./programInBrowser.ts";

/** WCAG 2.2, 2.1.1 Keyboard: the first hour with the program, from the README, and no mouse in the house. */
describeInBrowser("without a mouse", () => {
  let page: Page;
  let end: InBrowser["end"] | undefined;
  let call: Call;
  let complaints: string[];

  beforeAll(async () => {
    ({ page, call, complaints, end } = await demoInBrowser());
  }, 90_000);
  afterAll(async () => {
    await end?.();
  });

  /** Tabs on until what has the focus is called so; fails when a whole way round the page does not come by it. */
  async function tabTo(name: RegExp) {
    const passed: string[] = [];
    for (let i = 0; i < 150; i += 1) {
      await page.keyboard.press("Tab");
      const here = await page.evaluate(() => {
        const one = document.activeElement;
        if (one === null || one === document.body) return { name: "", seen: true };
        const box = one.getBoundingClientRect();
        const label =
          one instanceof HTMLInputElement || one instanceof HTMLSelectElement ? one.labels?.[0]?.textContent : "";
        return {
          name: (one.getAttribute("aria-label") || label || one.textContent || "").trim(),
          // WCAG 2.2, 2.4.11 Focus Not Obscured: its middle is not covered by a card, a bar or a banner.
          seen:
            one.contains(document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2)) ||
            one.matches("input"),
        };
      });
      if (name.test(here.name)) {
        expect(here).toMatchObject({ seen: true });
        return;
      }
      passed.push(here.name.slice(0, 30));
    }
    throw new Error(`nothing called ${name} was come by: ${passed.join(" | ")}`);
  }
  /** As a hand does: keys closer together than that are a scanner's. */
  async function press(key: string) {
    await page.keyboard.press(key);
    await page.waitForTimeout(3 * WEDGE_GAP_MS);
  }
  const enter = () => page.keyboard.press("Enter");

  it("measures a spindle and files it", async () => {
    await tabTo(/^Simulated gauge$/);
    await enter();
    await page.locator(".readout .state", { hasText: "at rest" }).waitFor();
    await press("s");
    await page.getByRole("combobox").waitFor();
    await page.keyboard.type("Mill 1", { delay: 60 });
    await enter();
    await page.getByRole("button", { name: /^spindle.*Mill 1/ }).waitFor();
    await press("g");
    await page.getByRole("combobox").waitFor();
    await page.keyboard.type("Gauge 1", { delay: 60 });
    await enter();
    await press("z");
    await page.getByText("Clamp and release three to five times").waitFor();
    for (let n = 1; n <= 3; n += 1) {
      await press("c");
      await page.getByText(/holding [2-9] s/).waitFor();
      await press("c");
      await page.getByText(`Drop ${n}`).waitFor();
    }
    await page.keyboard.press("Space");
    await page.locator(".toast.filed", { hasText: /kN filed to Mill 1/ }).waitFor();
    const { spindleId } = (await call("spindles.list")).find((row) => row.spindle.name === "Mill 1")!.spindle;
    expect((await call("checks.list", { spindleId, limit: 1 })).rows[0]!.n).toBe(3);
  }, 60_000);

  it("finds the worst spindle, and reads why", async () => {
    await tabTo(/^Spindles$/);
    await enter();
    await page.getByRole("heading", { name: "Spindles", level: 1 }).waitFor();
    await tabTo(/^Mill 7/);
    await enter();
    await page.getByRole("heading", { name: /^Mill 7/, level: 1 }).waitFor();
    await page.getByText("It has reached its minimum.").waitFor();
    await page.getByText("A stop stands on this spindle.").waitFor();
  }, 60_000);

  it("docks a round: every question answered, all filed", async () => {
    await page.keyboard.press("Shift+Tab"); // before the content stand the places
    await tabTo(/^Dock$/);
    await enter();
    await page.getByRole("heading", { name: "Dock", level: 1 }).waitFor();
    await tabTo(/^Dock the simulated gauge$/);
    await enter();
    await page.getByRole("heading", { name: /^Questions/ }).waitFor({ timeout: 20_000 });
    while (!(await page.getByRole("heading", { name: "Questions, 0 open" }).isVisible())) {
      await tabTo(/^(Leave out|Count once|Right as shown|Swapped, as shown)$/);
      await enter();
    }
    await tabTo(/^File \d checks/);
    await enter();
    await page.getByRole("heading", { name: /^\d checks filed/ }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("filed-title");
  }, 60_000);

  it("sees that a gauge was off, and which checks that puts in doubt", async () => {
    await tabTo(/^To the spindles$/);
    await enter();
    await page.getByText("Look at Gauge 2 first.").waitFor();
    await tabTo(/^Gauges and adapters$/);
    await enter();
    await page.getByRole("heading", { name: "Gauges and adapters", level: 1 }).waitFor();
    await tabTo(/^Gauge 2$/);
    await enter();
    await tabTo(/^Show the checks in doubt$/);
    await enter();
    await page.getByRole("heading", { name: "Checks in doubt" }).waitFor();
    await page.getByText(/verdicts? of .* would change/).waitFor();
    expect(complaints).toEqual([]);
  }, 60_000);
});
