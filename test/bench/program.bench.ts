import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildPage } from "../../scripts/buildPage.ts";
import { launch } from "../e2e/Browser.ts";
import { HoldfastProcess } from "../e2e/HoldfastProcess.ts";
import type { BenchRow } from "./BenchRow.ts";

const TRIES = 5;

/** How long a user waits for the first screen, from starting the installed program to a page that can be used. */
export async function programBench(): Promise<readonly BenchRow[]> {
  await buildPage();
  const browser = await launch();
  const home = mkdtempSync(join(tmpdir(), "holdfast-bench-"));
  const times: number[] = [];
  for (let i = 0; i < TRIES; i += 1) {
    const page = await browser.newPage();
    const startedAt = performance.now();
    const program = new HoldfastProcess(home);
    await page.goto(await program.address());
    await page.getByRole("link", { name: "Measure" }).waitFor();
    times.push((performance.now() - startedAt) / 1000);
    await page.close();
    await program.end();
  }
  await browser.close();
  rmSync(home, { recursive: true, force: true });
  const measured = times.sort((a, b) => a - b)[Math.floor(TRIES / 2)]!;
  return [
    {
      name: "start to first screen, installed",
      measured,
      limit: 3,
      unit: "s",
      met: measured < 3,
      note: `median of ${TRIES}`,
    },
  ];
}
