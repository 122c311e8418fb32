import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { launch } from "../test/e2e/Browser.ts";
import { HoldfastProcess, pageCalls } from "../test/e2e/HoldfastProcess.ts";
import { buildPage } from "./buildPage.ts";
import { Camera, type Look } from "./pictures/Camera.ts";
import { pictures } from "./pictures/pictureList.ts";
import { clampThree } from "./pictures/series.ts";
import { sourceHash } from "./pictures/sourceHash.ts";
import { recordPath, stalePictures } from "./pictures/stalePictures.ts";
import { root } from "./run.ts";

/**
 * Every picture of README, docs and help, taken from the running program with its demo works: same seed, same day. What is live
 * (the simulated gauge's noise) differs in its last digits. `--check` takes none and names those older than their screens.
 */
if (process.argv.includes("--check")) {
  const stale = stalePictures(root, pictures);
  if (stale.length > 0) {
    process.stderr.write(`Older than their screens: ${stale.join(", ")}. Take them anew with: npm run pictures\n`);
    process.exitCode = 1;
  }
} else await takeAll();

async function takeAll(): Promise<void> {
  await buildPage();
  mkdirSync(join(root, "renderer/screens/help/pictures"), { recursive: true });
  const home = mkdtempSync(join(tmpdir(), "holdfast-pictures-"));
  const clock = pathToFileURL(join(root, "scripts/pictures/fixedClock.mjs")).href;
  const program = new HoldfastProcess(home, ["--demo"], {
    NODE_OPTIONS: `--import=${clock}`,
    HOLDFAST_NO_BROWSER: "1",
  });
  const browser = await launch();
  try {
    const call = await pageCalls(await program.address());
    const rows = await call("spindles.list");
    const pageOf = (name: string) =>
      `#/spindles/${rows.find(({ spindle }) => spindle.name === name)!.spindle.spindleId}`;
    const set = ({ language, theme }: Look) => call("settings.save", { language, theme });
    const look = async (how: Look) => {
      await set(how);
      return Camera.at(browser, program, how);
    };
    const still = async (camera: Camera, names: readonly string[]) => {
      for (const name of names) {
        const [hash, sign, restMs] = places(pageOf)[name]!; // names come from below
        await camera.go(hash, sign, restMs);
        if (name === "import") await camera.page.locator(".place .button").last().click();
        await camera.take(name);
        if (name === "import") await camera.page.keyboard.press("Escape");
      }
    };

    for (const language of ["en", "de"] as const) {
      const camera = await look({ language, theme: "light", size: "help" });
      await still(camera, ["connect", "verdicts", "round", "proof", "service", "backup", "import"]);
      await camera.page.close();
    }
    const docs = await look({ language: "en", theme: "light", size: "docs" });
    await still(docs, ["spindles", "spindle", "dock", "rounds", "gauges", "records", "setup", "help"]);
    await docs.page.close();
    const dark = await look({ language: "en", theme: "dark", size: "docs" });
    await still(dark, ["spindles", "spindle"]);
    await dark.page.close();

    // One page sees it all: its strip holds what it has heard.
    const live = await look({ language: "en", theme: "light", size: "docs" });
    await live.go("#/measure", "main h1");
    await clampThree(call);
    for (const [language, theme, size] of [
      ["en", "light", "docs"],
      ["en", "dark", "docs"],
      ["en", "light", "help"],
      ["de", "light", "help"],
    ] as const) {
      await set({ language, theme, size });
      await live.turn({ language, theme, size });
      await live.page.locator(".forming .verdict").waitFor();
      await live.page.waitForTimeout(1_000);
      await live.take("measure");
      if (size !== "help") continue;
      const faults = live.page.locator(".simulated .quiet");
      await faults.click();
      await live.page.waitForTimeout(400);
      await live.take("simulated");
      await faults.click();
    }
    await live.page.close();
  } finally {
    await browser.close();
    await program.end();
    rmSync(home, { recursive: true, force: true });
  }
  const taken = Object.fromEntries(pictures.map(({ name, sources }) => [name, sourceHash(root, sources)]));
  writeFileSync(join(root, recordPath), `${JSON.stringify(taken, null, 2)}\n`);
}

/** Where each picture is taken, what must stand there first, and how long it then rests. */
function places(pageOf: (name: string) => string): Record<string, readonly [string, string, number?]> {
  return {
    connect: ["#/setup", "main h1"],
    verdicts: ["#/spindles", ".common-mode", 1_500],
    round: ["#/rounds", "main table"],
    proof: ["#/gauges", "main table"],
    service: [pageOf("Mill 5"), ".trend canvas"],
    backup: ["#/records", "main h1"],
    import: ["#/spindles", ".common-mode"],
    spindles: ["#/spindles", ".common-mode", 1_500],
    spindle: [pageOf("Mill 2"), ".trend canvas"],
    dock: ["#/dock", "main h1"],
    rounds: ["#/rounds", "main table"],
    gauges: ["#/gauges", "main table"],
    records: ["#/records", "main h1"],
    setup: ["#/setup", "main h1"],
    help: ["#/help", ".help article"],
  };
}
