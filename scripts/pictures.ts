import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { launch } from "../test/e2e/Browser.ts";
import { HoldfastProcess } from "../test/e2e/HoldfastProcess.ts";
import { buildPage } from "./buildPage.ts";
import { root } from "./run.ts";

/** Every picture of README and docs, taken from the running program with its demo works, light and dark. */
await buildPage();
const home = mkdtempSync(join(tmpdir(), "holdfast-pictures-"));
const program = new HoldfastProcess(home, ["--demo"]);
const browser = await launch();
try {
  for (const theme of ["light", "dark"] as const) {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, colorScheme: theme, locale: "en-GB" });
    const take = (name: string) =>
      page.screenshot({ path: join(root, "docs", `${name}${theme === "dark" ? "-dark" : ""}.png`) });
    await page.goto(await program.address());
    await measure(page, theme === "light");
    await take("measure");
    await page.getByRole("link", { name: "Spindles" }).click();
    await page.getByText("ranked by what to do next").waitFor();
    await page.waitForTimeout(1_500); // the ranking comes from a job
    await take("spindles");
    await page
      .getByRole("row", { name: /Mill 2/ })
      .first()
      .getByRole("link")
      .first()
      .click();
    await page.getByText("Limits").first().waitFor();
    await page.waitForTimeout(800);
    await take("spindle");
    for (const place of ["Dock", "Rounds", "Gauges", "Records", "Setup"] as const) {
      await page.getByRole("link", { name: place }).click();
      await page.waitForTimeout(600);
      await take(place.toLowerCase());
    }
    await page.close();
  }
} finally {
  await browser.close();
  await program.end();
  rmSync(home, { recursive: true, force: true });
}

/** Three clampings at a spindle of the demo, the last one still held. */
async function measure(page: Page, first: boolean): Promise<void> {
  if (first) {
    await page.getByRole("button", { name: "Simulated gauge" }).click();
    await page.getByText("at rest").first().waitFor({ timeout: 15_000 });
    for (const [key, name] of [
      ["s", "mill 1"],
      ["g", "gauge 1"],
      ["o", "operator 2"],
    ] as const) {
      await page.keyboard.press(key);
      await page.getByRole("combobox").waitFor();
      await page.keyboard.type(name, { delay: 90 });
      await page.keyboard.press("Enter");
      await page.waitForTimeout(400);
    }
    await page.waitForTimeout(1_500);
    for (let i = 0; i < 2; i += 1) {
      await page.getByRole("button", { name: "Clamp" }).click();
      await page.waitForTimeout(3_500);
      await page.getByRole("button", { name: "Release" }).click();
      await page.waitForTimeout(2_000);
    }
    await page.getByRole("button", { name: "Clamp" }).click();
  }
  await page.getByText("holding").first().waitFor();
  await page.waitForTimeout(2_500);
}
