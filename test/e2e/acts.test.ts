import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeInBrowser } from "./Browser.ts";
import type { Call } from "./HoldfastProcess.ts";
import { demoInBrowser, type InBrowser } from "./programInBrowser.ts";
import { toldActs } from "./toldActs.ts";

/**
 * How many acts a job takes, counted as it is done. One act: a label scanned, a key or button pressed, a text typed with its
 * Enter. Clampings are not counted: the spindle is worked, not the program. What is found here is what `docs/acts.md` says.
 */
describeInBrowser("acts of the hand", () => {
  let page: Page;
  let end: InBrowser["end"] | undefined;
  let call: Call;
  let complaints: string[];
  let acts = 0;

  const press = async (key: string) => {
    acts += 1;
    await page.keyboard.press(key);
  };
  const click = async (name: string | RegExp, role: "button" | "link" = "button") => {
    acts += 1;
    await page.getByRole(role, { name }).first().click();
  };
  const scan = async (label: string) => {
    acts += 1;
    // As fast as a scanner, whatever else this computer does: keys sent one by one may come as slowly as a finger's.
    await page.evaluate(
      (keys) => {
        for (const key of keys)
          document.body.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
      },
      [...label, "Enter"],
    );
  };
  const clampThree = async () => {
    for (let i = 0; i < 3; i += 1) {
      await call("simulated.command", { command: "clamp" });
      await page.waitForTimeout(2_300);
      await call("simulated.command", { command: "release" });
      await page.waitForTimeout(1_400);
    }
    await page.getByText("series of 3").waitFor();
  };
  const spindle = async (name: string) =>
    (await call("spindles.list")).find((row) => row.spindle.name === name)!.spindle;
  const checkCount = async () => (await call("spindles.list")).reduce((sum, row) => sum + row.checkCount, 0);
  const to = async (hash: string) => {
    await page.evaluate((where) => {
      location.hash = where;
    }, hash);
    await page.waitForTimeout(500);
  };

  beforeAll(async () => {
    ({ page, call, complaints, end } = await demoInBrowser({
      settings: { sound: false },
      prepare: async (call) => {
        const gaugeId = (await call("gauges.list")).find(({ gauge }) => gauge.name === "Gauge 1")!.gauge.gaugeId;
        const operatorId = (await call("operators.list"))[0]!.operatorId;
        await call("link.open", { source: { kind: "simulated" }, gaugeId });
        // Gauge and operator stay from the check before: that is how a shift goes.
        const { draft } = await call("state.snapshot");
        await call("series.tag", { seriesId: draft.seriesId, gaugeId, operatorId });
      },
    }));
    await page.locator(".readout .state", { hasText: "at rest" }).waitFor();
    await page.waitForTimeout(2_000); // a rest to take the zero from
  }, 90_000);
  afterAll(async () => {
    await end?.();
  });

  it("one spindle, from its scanned label to the filed check: at most three, and the tag survives a reload", async () => {
    const before = await checkCount();
    acts = 0;
    await scan("Mill 1");
    await page.getByText("Adapter HSK-A 63").waitFor();
    await page.reload(); // not an act of the work: what was scanned must still be there
    await page.getByText("Adapter HSK-A 63").waitFor();
    await clampThree();
    await press("Space");
    await page.locator(".toast.filed", { hasText: /kN filed to Mill 1/ }).waitFor();
    expect(await checkCount()).toBe(before + 1);
    expect(acts).toBeLessThanOrEqual(3);
    expect(acts).toBe(toldActs("one spindle"));
  });

  it("a round: at most three for each spindle", async () => {
    // Not Mill 1: what was measured today counts as done.
    const stops = await Promise.all(["Mill 2", "Mill 3", "Mill 9"].map(spindle));
    await call("rounds.save", {
      name: "Round of three",
      on: new Date().toISOString().slice(0, 10),
      stops: stops.map(({ spindleId }) => ({ spindleId })),
      made: "byHand",
    });
    const before = await checkCount();
    await to("#/rounds");
    acts = 0;
    await page.getByText("Round of three").first().waitFor();
    await click("Measure with the gauge connected");
    const begun = acts;
    for (let i = 0; i < stops.length; i += 1) {
      await page.locator(".round-lead").waitFor();
      await clampThree();
      await press("Space");
      await expect.poll(checkCount, { timeout: 10_000 }).toBe(before + i + 1);
    }
    const each = (acts - begun) / stops.length;
    expect(each).toBeLessThanOrEqual(3);
    expect(each).toBe(toldActs("a spindle of a round"));
  }, 90_000);

  it("finding last year's check of a spindle", async () => {
    await to("#/records");
    acts = 0;
    await scan("Mill 2");
    await page.getByRole("heading", { name: /Mill 2/ }).waitFor();
    await click(new RegExp(String(new Date().getFullYear() - 1)), "link");
    await page.getByRole("heading", { name: /^Check of / }).waitFor();
    expect(acts).toBe(toldActs("last year's check"));
  });

  it("proving a gauge: from anywhere to the cautions before the first load", async () => {
    await call("references.save", {
      name: "Proving ring readings",
      kind: "typed",
      typed: { relative: 1e-4, standardN: 0 },
      state: "inUse",
    });
    await to("#/measure");
    acts = 0;
    await click("Gauges", "link");
    await click("Prove Gauge 1", "link");
    await page.getByRole("heading", { name: "Prove Gauge 1" }).waitFor();
    acts += 1;
    await page.locator("main select").first().selectOption({ index: 1 });
    await click("To the cautions");
    await page.getByRole("heading", { name: "Before the first load" }).waitFor();
    expect(acts).toBe(toldActs("proving a gauge"));
    expect(complaints).toEqual([]);
  });
});
