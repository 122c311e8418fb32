import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import type { CycleView } from "../../app/contract/seriesViews.ts";
import { runCli } from "../../main/cli/main.ts";
import { openReader } from "../../main/store/open.ts";
import { readCheck } from "../../main/store/records/checks.ts";
import { hasSocat } from "../support/ptyPair.ts";
import { complaintsOf, describeInBrowser, launch } from "./Browser.ts";
import { HoldfastProcess, pageCalls } from "./HoldfastProcess.ts";
import { SimulatorProcess } from "./SimulatorProcess.ts";

const needsSocat = hasSocat || process.env.HOLDFAST_REQUIRE_SOCAT === "1";
if (!needsSocat) console.warn("SKIPPED: a gauge on a serial port, because socat is not installed");

/** The register a works begins with. */
async function register(program: HoldfastProcess) {
  const call = await pageCalls(await program.address());
  const limits = { minimumN: 14_400, warningN: 15_300, nominalN: 18_000, maximumN: 20_000 };
  const spindle = await call("spindles.save", {
    name: "Mill 3",
    machine: "Mill 3",
    area: "hall B",
    taper: "HSK-A63",
    limits,
    state: "inUse",
  });
  await call("spindles.save", {
    name: "Lathe 4",
    machine: "Lathe 4",
    area: "hall A",
    taper: "SK40",
    limits,
    state: "inUse",
  });
  await call("adapters.save", {
    name: "A63-2",
    taper: "HSK-A63",
    scale: 1,
    scaleUncertainty: 0.001,
    assumed: false,
    version: 1,
    state: "inUse",
  });
  const gauge = await call("gauges.save", { name: "Gauge 1", capacityN: 30_000, state: "inUse" });
  return { call, spindleId: spindle.spindle.spindleId, gaugeId: gauge.gauge.gaugeId };
}

type SpoolCycle = { settledN: number; settledUncertaintyN: number; peakN: number; flags: string[] };

async function cyclesOfSpool(home: string): Promise<SpoolCycle[]> {
  const spools = readdirSync(join(home, "spool")).filter((name) => name.endsWith(".spool"));
  expect(spools).toHaveLength(1);
  let said = "";
  const code = await runCli(["cycles", join(home, "spool", spools[0]!), "--json"], {
    stdin: Readable.from([]),
    out: (text) => {
      said += text;
    },
    err: (text) => {
      said += text;
    },
    env: {},
    signal: new AbortController().signal,
  });
  expect(code, said).toBe(0);
  return (JSON.parse(said) as { cycles: SpoolCycle[] }).cycles;
}

describeInBrowser("a gauge on a serial port, a force filed to a spindle", () => {
  let browser: Browser;
  let page: Page;
  let home: string;
  let program: HoldfastProcess;
  let simulator: SimulatorProcess;
  let complaints: string[];

  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
  });
  beforeEach(async () => {
    home = mkdtempSync(join(tmpdir(), "holdfast-e2e-"));
    const port = join(home, "ttyGauge");
    simulator = await SimulatorProcess.start([
      "--pty",
      "--path",
      port,
      "--rate",
      "100",
      "--format",
      "status",
      "--force",
      "17.9 kN",
      "--zero=-35 N",
    ]);
    program = new HoldfastProcess(home, [], { HOLDFAST_PORTS: port });
    page = await browser.newPage({ viewport: { width: 1280, height: 800 }, locale: "en-GB" });
    complaints = complaintsOf(page);
  });
  afterEach(async () => {
    await page.close();
    await program.end();
    await simulator.end();
    rmSync(home, { recursive: true, force: true });
  });

  it.runIf(needsSocat)(
    "goes from the simulator over a pseudo-terminal, the serial driver and the page into the database, and back out of the spool",
    async () => {
      const { spindleId } = await register(program);
      await page.goto(await program.address());
      await page.getByRole("button", { name: "ttyGauge" }).click();
      await page.locator(".readout .state", { hasText: "at rest" }).waitFor({ timeout: 15_000 });
      await page.keyboard.press("s");
      await page.getByRole("combobox").waitFor();
      await page.keyboard.type("mill 3", { delay: 60 }); // faster would be a scanner
      await page.keyboard.press("Enter");
      await page.getByText("A63-2").waitFor(); // the one adapter that fits
      await new Promise((done) => setTimeout(done, 1_200)); // a rest to take the zero from
      for (let i = 0; i < 3; i += 1) await simulator.clampFor(2_600, 1_500);
      await page.getByRole("button", { name: /File 17\.\d+ kN to Mill 3/ }).waitFor({ timeout: 10_000 });
      await page.getByText("series of 3").waitFor({ timeout: 10_000 });
      await page.locator("main").click({ position: { x: 5, y: 5 } });
      await page.keyboard.press("Space");
      await page.getByText(/filed/i).first().waitFor({ timeout: 10_000 });

      const truth = await simulator.truth();
      const db = openReader(program.dataFile);
      const { check_id: checkId } = db.prepare("SELECT check_id FROM check_row").get() as { check_id: string };
      const { check, summary } = readCheck(db, checkId)!;
      db.close();
      expect(summary.spindleId).toBe(spindleId);
      expect(truth).toHaveLength(3);
      expect(check.cycles).toHaveLength(3);
      // The detector states 0.05 % or three standard errors; the gauge's step is 10 N.
      for (const [i, { settledN }] of truth.entries()) {
        const bound = Math.max(0.0005 * settledN, 3 * check.cycles[i]!.settledUncertaintyN!, 10);
        expect(Math.abs(check.cycles[i]!.settledN! - settledN)).toBeLessThan(bound);
      }
      const mean = truth.reduce((sum, t) => sum + t.settledN, 0) / 3;
      expect(Math.abs(check.valueN! - mean)).toBeLessThan(15);
      expect(check.verdict).toBe("good");

      await page.getByRole("link", { name: "Spindles" }).click();
      const shown = page.getByRole("row", { name: /Mill 3/ });
      await shown.waitFor();
      const shownN = (digits: number) => (check.valueN! / 1000).toFixed(digits); // as many as the uncertainty lets stand
      expect(await shown.textContent()).toMatch(new RegExp(`${shownN(1)}|${shownN(2)}`.replaceAll(".", "\\.")));
      expect(await shown.textContent()).toContain("good");

      // The spool, read by the command line, gives the same cycles. It goes on after the check was filed, and a longer
      // rest knows the zero better: above the zero all stands to the last digit, from the zero within what both state.
      const again = await cyclesOfSpool(home);
      const rise = (c: { peakN: number; settledN: number | null }) => (c.peakN - c.settledN!).toFixed(6);
      expect(again.map((c) => c.flags)).toEqual(check.cycles.map((c) => c.flags));
      expect(again.map(rise)).toEqual(check.cycles.map(rise));
      for (const [i, { settledN, settledUncertaintyN }] of again.entries()) {
        const filed = check.cycles[i]!;
        const apart = Math.hypot(settledUncertaintyN, filed.settledUncertaintyN!);
        expect(Math.abs(settledN - filed.settledN!)).toBeLessThan(3 * apart);
      }
      expect(complaints).toEqual([]);
    },
    60_000,
  );

  it.runIf(needsSocat)(
    "offers the same cycles again after the program was killed in the middle of a series",
    async () => {
      const { call, spindleId, gaugeId } = await register(program);
      await call("link.open", {
        source: {
          kind: "serial",
          path: join(home, "ttyGauge"),
          setting: { baud: 9600, dataBits: 8, parity: "none", stopBits: 1 },
        },
        gaugeId,
      });
      await expect.poll(async () => (await call("state.snapshot")).live.word, { timeout: 15_000 }).toBe("atRest");
      const { seriesId } = (await call("state.snapshot")).draft;
      await call("series.tag", { seriesId, spindleId });
      await new Promise((done) => setTimeout(done, 1_200));
      await simulator.clampFor(2_600, 1_500);
      await simulator.clampFor(2_600, 1_500);
      await expect.poll(async () => (await call("state.snapshot")).draft.cycles.length, { timeout: 10_000 }).toBe(2);
      const before = (await call("state.snapshot")).draft;
      await simulator.tell("clamp");
      await new Promise((done) => setTimeout(done, 1_500));
      await program.end("SIGKILL");

      program = new HoldfastProcess(home);
      const after = (await (await pageCalls(await program.address()))("state.snapshot")).draft;
      expect(after.seriesId).toBe(seriesId);
      expect(after.recovered).toBe(true);
      expect(after.tag).toEqual(before.tag);
      // The zero may be known better by a further rest; what the readings gave above it is the same.
      const figures = (cycles: readonly CycleView[]) =>
        cycles.map((c) => [c.cycleId, (c.peakN - c.settledN!).toFixed(6)]);
      expect(figures(after.cycles.slice(0, 2))).toEqual(figures(before.cycles));
      expect(after.cycles).toHaveLength(3); // the one in work is offered as what it is
      expect(after.cycles[2]!.flags).toContain("cut");
    },
    60_000,
  );
});
