import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeInBrowser } from "./Browser.ts";
import { demoInBrowser, type InBrowser } from "./programInBrowser.ts";

describeInBrowser("the tour of the demo", () => {
  let page: Page;
  let end: InBrowser["end"] | undefined;
  let complaints: string[];
  const card = () => page.getByRole("region", { name: "Tour of the demo" });
  const step = async () => Number(/Step (\d+) of/.exec((await card().textContent()) ?? "")?.[1]);

  beforeAll(async () => {
    ({ page, complaints, end } = await demoInBrowser());
  }, 90_000);
  afterAll(async () => {
    await end?.();
  });

  it("is taken from Help, waits for the reader's own act, and points at the thing on the screen", async () => {
    await page.keyboard.press("F1");
    await page.getByRole("link", { name: "Help" }).waitFor();
    await page.evaluate(() => {
      location.hash = "#/help";
    });
    await page.getByRole("main").getByRole("button", { name: "Take the tour" }).click();
    expect(await step()).toBe(1);
    const pointedAt = page.locator("[data-pointed-at]");
    expect(await pointedAt.textContent()).toBe("Spindles");
    await pointedAt.click(); // the reader's own hand
    await expect.poll(step).toBe(2);
    await expect.poll(() => pointedAt.textContent()).toBe("Mill 2");
  });

  it("keeps its place on this PC when it is left, over a reload", async () => {
    await card().getByRole("button", { name: "Show me" }).click();
    await expect.poll(step).toBe(3);
    await card().getByRole("button", { name: "Go on later" }).click();
    await card().waitFor({ state: "detached" });
    await page.reload();
    await page.waitForSelector("main h1");
    expect(await card().count()).toBe(0);
    await page.evaluate(() => {
      location.hash = "#/help";
    });
    // What was to be looked at is on another screen: it goes on with the act that leads there.
    // From the banner of every page as from Help.
    await page.getByRole("status").getByRole("button", { name: "Go on at step 2" }).click();
    expect(await step()).toBe(2);
  });

  it("goes through every story to its end, the docked round with the swapped pair and the gauge's proof among them", async () => {
    const stories: string[] = [];
    for (let i = 0; i < 60 && (await card().count()) > 0; i += 1) {
      const title = (await card().getByRole("heading").textContent())!;
      if (stories.at(-1) !== title) stories.push(title);
      const before = await step();
      const act = card()
        .getByRole("button", { name: /^(Show me|Next|End the tour)$/ })
        .first();
      const isLast = (await act.textContent()) === "End the tour";
      await act.click();
      if (isLast) break;
      // A round comes back with several questions: each press answers one.
      await expect
        .poll(step, { timeout: 4_000 })
        .not.toBe(before)
        .catch(() => {});
    }
    expect(stories).toEqual([
      "A tiring spring pack",
      "A broken spring",
      "A dry gripper, greased",
      "A gauge gone off",
      "A round comes back",
      "Two spindles swapped",
      "Can the gauge be trusted?",
      "Your turn",
    ]);
    await card().waitFor({ state: "detached" });
    expect(complaints).toEqual([]);
  }, 120_000);
});
