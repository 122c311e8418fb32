import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CDPSession, Page } from "playwright-core";
import { buildPage } from "../../scripts/buildPage.ts";
import { launch } from "../e2e/Browser.ts";
import { HoldfastProcess, pageCalls } from "../e2e/HoldfastProcess.ts";
import { SimulatorProcess } from "../e2e/SimulatorProcess.ts";
import type { BenchRow } from "./BenchRow.ts";
import { type LongFrame, quantile, startFrames, watchedFrames } from "./page/frames.ts";
import { manySpindles } from "./page/manySpindles.ts";

/** Minutes live; HOLDFAST_BENCH_MINUTES makes a shorter run, which is then said. */
const MINUTES = Number(process.env.HOLDFAST_BENCH_MINUTES ?? 5);
const SPINDLES = 5_000;

/** The page in a real browser: live at 10 kHz, a long list, the first screen. */
export async function pageBench(): Promise<readonly BenchRow[]> {
  await buildPage();
  const browser = await launch();
  const home = mkdtempSync(join(tmpdir(), "holdfast-page-bench-"));
  manySpindles(home, SPINDLES);
  const gauge = await SimulatorProcess.start(["--tcp", "0", "--rate", "10000", "--capacity", "30 kN"]);
  const program = new HoldfastProcess(home, [], { HOLDFAST_NO_BROWSER: "1" });
  try {
    const call = await pageCalls(await program.address());
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, locale: "en-GB" });
    const cdp = await page.context().newCDPSession(page);
    await cdp.send("Performance.enable");
    await page.goto(await program.address());
    await page.waitForSelector("main h1");
    const scriptS = await metric(cdp, "ScriptDuration");
    await call("link.open", { source: { kind: "tcp", ...gauge.address! } });
    await page.evaluate(() => {
      location.hash = "#/measure";
    });
    await page.waitForTimeout(8_000);
    const live = await liveRows(page, cdp, gauge);
    await call("link.close");
    return [firstScreen(scriptS), ...live, ...(await listRows(page))];
  } finally {
    await browser.close();
    await program.end();
    await gauge.end();
    rmSync(home, { recursive: true, force: true });
  }
}

const row = (name: string, measured: number, limit: number, unit: string, note: string): BenchRow => ({
  name,
  measured,
  limit,
  unit,
  met: measured <= limit,
  note,
});

const firstScreen = (scriptS: number) =>
  row("first screen, time in scripts", scriptS, 1, "s", "from navigation to its heading");

async function liveRows(page: Page, cdp: CDPSession, gauge: SimulatorProcess): Promise<readonly BenchRow[]> {
  const heapBefore = await heap(cdp);
  await startFrames(page);
  const latencies: number[] = [];
  for (const end = performance.now() + MINUTES * 60_000; performance.now() < end; ) {
    latencies.push(await latency(page, gauge));
    await page.waitForTimeout(1_500);
  }
  const { gapsMs, long } = await watchedFrames(page);
  const grownMb = ((await heap(cdp)) - heapBefore) / 1e6;
  const about = `10 kHz, ${MINUTES} min, ${gapsMs.length} frames`;
  return [
    row("live: frame time, 99th percentile", quantile(gapsMs, 0.99), 34, "ms", about),
    row("live: greatest frame time", Math.max(...gapsMs), 100, "ms", `${about}; other programs' load is in it`),
    greatest("live: greatest frame of the page's own", long),
    row("live: memory growth after collection", grownMb, 20, "MB", about),
    row(
      "live: command to clamp until the figure shows it, 95th percentile",
      quantile(latencies, 0.95),
      100,
      "ms",
      `${latencies.length} steps`,
    ),
  ];
}

/** From the command to clamp until the figure leaves zero: an upper bound, with the command's way and the first rise in it. */
async function latency(page: Page, gauge: SimulatorProcess): Promise<number> {
  const shown = page.evaluate(
    () =>
      new Promise<number>((done) => {
        const output = document.querySelector(".readout output")!;
        const look = () => {
          if (Math.abs(Number.parseFloat(output.textContent ?? "0")) > 0.5)
            done(performance.timeOrigin + performance.now());
          else requestAnimationFrame(look);
        };
        look();
      }),
  );
  await page.waitForTimeout(300);
  const toldAt = performance.timeOrigin + performance.now();
  await gauge.tell("clamp");
  const seenAt = await shown;
  await page.waitForTimeout(800);
  await gauge.tell("release");
  return Math.max(0, seenAt - toldAt);
}

async function listRows(page: Page): Promise<readonly BenchRow[]> {
  await page.evaluate(() => {
    location.hash = "#/spindles";
  });
  await page.locator(".spindles tbody tr").first().waitFor();
  await page.waitForTimeout(3_000);
  await startFrames(page);
  await page.mouse.move(640, 500);
  for (let i = 0; i < 200; i += 1) {
    await page.mouse.wheel(0, 400);
    await page.waitForTimeout(30);
  }
  const { gapsMs, long } = await watchedFrames(page);
  const about = `${SPINDLES} spindles, ${gapsMs.length} frames`;
  return [
    row("list: frame time while scrolling, 99th percentile", quantile(gapsMs, 0.99), 34, "ms", about),
    row("list: greatest frame time while scrolling", Math.max(...gapsMs), 100, "ms", about),
    greatest("list: greatest frame of the page's own while scrolling", long),
  ];
}

/** What kept the page's own thread busy; what the rest of the computer did is not in it. */
function greatest(name: string, long: readonly LongFrame[]): BenchRow {
  const worst = long.toSorted((a, b) => b.tookMs - a.tookMs)[0];
  if (worst === undefined) return row(name, 50, 100, "ms", "none took over 50 ms");
  const note = `${long.length} took over 50 ms, the longest with ${worst.scriptMs.toFixed(0)} ms of scripts`;
  return row(name, worst.tookMs, 100, "ms", note);
}

async function metric(cdp: CDPSession, name: string): Promise<number> {
  const { metrics } = await cdp.send("Performance.getMetrics");
  return metrics.find((one) => one.name === name)?.value ?? Number.NaN;
}

async function heap(cdp: CDPSession): Promise<number> {
  await cdp.send("HeapProfiler.collectGarbage");
  return metric(cdp, "JSHeapUsedSize");
}
