import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import type { HoldfastProcess } from "../../test/e2e/HoldfastProcess.ts";
import { root } from "../run.ts";

export type Look = { readonly language: "en" | "de"; readonly theme: "light" | "dark"; readonly size: "docs" | "help" };

const sizes = { docs: { width: 1280, height: 800 }, help: { width: 1000, height: 640 } };

/** A page of the running program in one language, theme and size, and the way to keep what it shows. */
export class Camera {
  readonly page: Page;
  #look: Look;

  private constructor(page: Page, look: Look) {
    this.page = page;
    this.#look = look;
  }

  static async at(browser: Browser, program: HoldfastProcess, look: Look): Promise<Camera> {
    const page = await browser.newPage({
      viewport: sizes[look.size],
      colorScheme: look.theme,
      locale: look.language === "en" ? "en-GB" : "de-DE",
      reducedMotion: "reduce",
    });
    await page.goto(await program.address());
    await page.waitForSelector("main h1, main h2");
    return new Camera(page, look);
  }

  /** The same page, with what it has drawn, in another theme and size; the language and the program's own theme are the program's. */
  async turn(look: Look): Promise<void> {
    this.#look = look;
    await this.page.setViewportSize(sizes[look.size]);
    await this.page.emulateMedia({ colorScheme: look.theme, reducedMotion: "reduce" });
  }

  async go(hash: string, sign: string, restMs = 900): Promise<void> {
    await this.page.evaluate(`location.hash = ${JSON.stringify(hash)}`);
    await this.page.locator(sign).first().waitFor();
    await this.page.waitForTimeout(restMs); // charts and what a job works out
  }

  /** @param name  of the picture in docs, or of the help page it belongs to */
  async take(name: string): Promise<void> {
    const { language, theme, size } = this.#look;
    const path =
      size === "docs"
        ? join(root, "docs", `${name}${theme === "dark" ? "-dark" : ""}.png`)
        : join(root, "renderer/screens/help/pictures", `${name}-${language}.png`);
    await this.page.mouse.move(1, 1); // nothing stands under the pointer
    await this.page.screenshot({ path });
  }
}
