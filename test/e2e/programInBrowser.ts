import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import type { Input } from "../../app/contract/methods.ts";
import { complaintsOf, launch } from "./Browser.ts";
import { type Call, HoldfastProcess, pageCalls } from "./HoldfastProcess.ts";

/** The program as a user has it, and one page that shows it. */
export type InBrowser = {
  readonly browser: Browser;
  readonly program: HoldfastProcess;
  readonly home: string;
  readonly page: Page;
  readonly call: Call;
  /** What the page complained of; a test asks that it is nothing. */
  readonly complaints: string[];
  /** Ends the browser and the program; nothing of them is left. */
  readonly end: () => Promise<void>;
};

/** How a trial begins; in English where nothing else is said. */
export type Beginning = {
  /** For the program. */
  readonly args?: readonly string[];
  readonly settings?: Input<"settings.save">;
  readonly viewport?: { readonly width: number; readonly height: number };
  /** What is in the records before the page opens. */
  readonly prepare?: (call: Call, program: HoldfastProcess) => Promise<void>;
};

/** Starts the program with a home of its own, and a browser at it. */
export async function programInBrowser({
  args = [],
  settings = {},
  viewport = { width: 1280, height: 800 },
  prepare,
}: Beginning): Promise<InBrowser> {
  const home = mkdtempSync(join(tmpdir(), "holdfast-browser-"));
  const program = new HoldfastProcess(home, args);
  let browser: Browser | undefined;
  const end = async () => {
    await browser?.close();
    await program.end();
    rmSync(home, { recursive: true, force: true });
  };
  try {
    browser = await launch();
    const call = await pageCalls(await program.address());
    await call("settings.save", { language: "en", ...settings });
    await prepare?.(call, program);
    const page = await browser.newPage({ viewport, locale: "en-GB" });
    const complaints = complaintsOf(page);
    await page.goto(await program.address());
    await page.waitForSelector("main h1, main h2");
    return { browser, program, home, page, call, complaints, end };
  } catch (cause) {
    await end();
    throw cause;
  }
}

/** The same with the demo's invented works. */
export const demoInBrowser = (beginning: Omit<Beginning, "args"> = {}): Promise<InBrowser> =>
  programInBrowser({ args: ["--demo"], ...beginning });
