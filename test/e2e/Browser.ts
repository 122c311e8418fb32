import { existsSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";
import { describe } from "vitest";

const places = [
  process.env.HOLDFAST_BROWSER,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/microsoft-edge",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

const found = places.find((path) => path !== undefined && existsSync(path));

/** Tests in a real browser. Without one they are skipped loudly, or fail with HOLDFAST_REQUIRE_BROWSER=1. */
export function describeInBrowser(name: string, body: () => void): void {
  if (found !== undefined || process.env.HOLDFAST_REQUIRE_BROWSER === "1") {
    describe(name, body);
    return;
  }
  console.warn(`SKIPPED: "${name}", because no Chromium, Chrome or Edge is installed; HOLDFAST_BROWSER may name one`);
  describe.skip(name, body);
}

/** A browser that talks to this machine only. */
export function launch(): Promise<Browser> {
  if (found === undefined) throw new Error("no browser is installed");
  return chromium.launch({
    executablePath: found,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}

/** What the page complained of; a test asks that it is nothing. */
export function complaintsOf(page: Page): string[] {
  const said: string[] = [];
  page.on("pageerror", (error) => said.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") said.push(message.text());
  });
  return said;
}
