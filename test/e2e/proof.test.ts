import { readFileSync } from "node:fs";
import axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { WEDGE_GAP_MS } from "../../renderer/ui/keys/WedgeReader.ts";
import { describeInBrowser } from "./Browser.ts";
import type { Call } from "./HoldfastProcess.ts";
import { demoInBrowser, type InBrowser } from "./programInBrowser.ts";
import { toldActs } from "./toldActs.ts";

describeInBrowser("the proof of a gauge in the demo, two instruments read live", () => {
  let page: Page;
  let end: InBrowser["end"] | undefined;
  let call: Call;
  let complaints: string[];

  beforeAll(async () => {
    ({ page, call, complaints, end } = await demoInBrowser());
  }, 90_000);
  afterAll(async () => {
    await end?.();
  });

  /** Acts of the hand for the proof itself; the simulated rig's own loading is not counted. */
  let acts = 0;
  const next = async () => (await call("proof.state")).proof?.next;

  it("is led by the keyboard from the plan to the filed result", async () => {
    const gauge = (await call("gauges.list"))[0]!.gauge;
    await page.getByRole("link", { name: "Gauges" }).click();
    await page.getByRole("link", { name: `Prove ${gauge.name}` }).click();
    await page.getByLabel("Working check").check();
    await page.getByLabel("Permissible error").fill("1");
    await page.getByText("Loads, runs and times").click();
    for (const [name, leave] of [
      [/^Remove load/, 2],
      [/^Remove run/, 2],
    ] as const) {
      const buttons = page.getByRole("button", { name });
      while ((await buttons.count()) > leave) await buttons.last().click();
    }
    await page.getByLabel("A load stands before it is read").fill("1");
    await page.getByLabel("A reading takes").fill("3");
    await page.getByLabel("Rest at zero before it is read").fill("1");
    await page.getByRole("button", { name: "To the cautions" }).click();
    await page.getByText("Nobody under or beside the load").waitFor();
    await page.keyboard.press("Space");
    acts += 1;
    acts += 1;
    await page.getByRole("button", { name: "Simulated gauge" }).click();
    await page.getByRole("button", { name: "Simulated gauge" }).waitFor({ state: "detached" }); // what stands below moves up
    acts += 1;
    await page.getByRole("button", { name: "Simulated reference" }).click();
    await page.getByRole("button", { name: "Simulated reference" }).waitFor({ state: "detached" });
    for (let now = await next(); now?.kind === "act"; now = await next()) {
      const { act, remaining } = now;
      if (act.kind === "read") {
        await page.keyboard.press("l");
        await page.waitForTimeout(3 * WEDGE_GAP_MS); // keys closer than that are a scanner's, and no hand's
        await page.locator(".phase .ready").waitFor({ timeout: 30_000 });
      }
      await page.locator(".go-on [aria-disabled]").waitFor({ state: "detached" }); // a key before the answer does nothing
      await page.keyboard.press("Space");
      acts += 1;
      if (remaining > 1) await page.locator(".where", { hasText: new RegExp(`\\b${remaining - 1} left`) }).waitFor();
      else await page.getByRole("button", { name: /^File this proof/ }).waitFor();
    }
    // Cautions, both ports, two mountings, two preloads, and two runs of two loads between two zeros: one act each.
    expect(acts).toBe(1 + 2 + 2 + 2 + 2 * 4);
    await page.getByText("Conforming: every step lies within the permissible error.").waitFor();
    await page.keyboard.press("Space");
    acts += 1;
    expect(acts).toBe(toldActs("a whole proof"));
    await page.getByRole("heading", { name: new RegExp(`^Proof of ${gauge.name}`) }).waitFor();
    const { rows } = await call("proofs.list", { gaugeId: gauge.gaugeId });
    const { proof } = await call("proofs.get", { proofId: rows[0]!.proofId });
    expect(page.url()).toContain(proof.proofId);
    expect(proof.result?.conformity).toBe("conforming");
    // Both hang in one simulated rig: what the gauge shows and what the reference says lie within its own errors.
    for (const { referenceN, errorN } of proof.result!.steps) expect(Math.abs(errorN / referenceN)).toBeLessThan(0.005);
    expect(complaints).toEqual([]);
  }, 120_000);

  it("keeps a reference and a plan that are saved over its plan's form, and begins nothing by it", async () => {
    const { gaugeId } = (await call("gauges.list"))[0]!.gauge;
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `#/gauges/${gaugeId}/prove`);
    await page.getByRole("button", { name: "Add a reference" }).click();
    const dialog = page.getByRole("dialog");
    await dialog.getByLabel("Name").fill("Certificate 8");
    await dialog.getByLabel("typed values").check();
    await dialog.getByLabel("U (k = 2), % of the value").fill("0.02");
    await dialog.getByRole("button", { name: "Save" }).click();
    await dialog.waitFor({ state: "detached" });
    expect((await call("references.list")).map(({ reference }) => reference.name)).toContain("Certificate 8");
    await page.getByText("Loads, runs and times").click();
    await page.getByRole("button", { name: "Keep this as a plan of our own" }).click();
    await dialog.getByLabel("Name").fill("Toolroom, yearly");
    await page.keyboard.press("Enter");
    await page.getByLabel("Plan", { exact: true }).waitFor();
    expect((await call("plans.list")).map(({ name }) => name)).toEqual(["Toolroom, yearly"]);
    expect((await call("proof.state")).proof).toBeUndefined();
  });

  it("goes out as CSV and JSON from its page", async () => {
    const { gaugeId } = (await call("gauges.list"))[0]!.gauge;
    await page.evaluate(
      (hash) => {
        location.hash = hash;
      },
      `#/gauges/proofs/${(await call("proofs.list", { gaugeId })).rows[0]!.proofId}`,
    );
    for (const [button, start] of [
      ["Figures, CSV", /\w+[,;]/],
      ["Figures with units, JSON", /^\s*\{/],
    ] as const) {
      const [file] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: button }).click(),
      ]);
      expect(readFileSync(await file.path(), "utf8")).toMatch(start);
    }
  });

  it.each([
    ["en", "light"],
    ["en", "dark"],
    ["de", "light"],
    ["de", "dark"],
  ] as const)(
    "has nothing that axe finds wrong in %s, %s, and no page that scrolls sideways at 320 px",
    async (language, theme) => {
      await call("settings.save", { language, theme });
      const { gaugeId } = (await call("gauges.list"))[0]!.gauge;
      const { proofId } = (await call("proofs.list", { gaugeId })).rows[0]!;
      const { adapterId } = (await call("adapters.list"))[0]!.adapter;
      const places = [
        "gauges",
        `gauges/${gaugeId}`,
        `gauges/${gaugeId}/prove`,
        `gauges/proofs/${proofId}`,
        `gauges/proofs/${proofId}/affected`,
        `gauges/factor/${adapterId}`,
      ];
      await page.evaluate(axe.source);
      const found: string[] = [];
      for (const place of places) {
        await page.setViewportSize({ width: 1280, height: 800 });
        await page.evaluate((hash) => {
          location.hash = hash;
        }, `#/${place}`);
        await page.locator("main h1").first().waitFor();
        await new Promise((done) => setTimeout(done, 500));
        const violations = await page.evaluate(async () => {
          const { axe: there } = globalThis as unknown as { axe: typeof axe }; // put there just now
          return (await there.run(document)).violations.map((v) => `${v.id}: ${v.nodes[0]?.html.slice(0, 120)}`);
        });
        found.push(...violations.map((v) => `${place} ${v}`));
        await page.setViewportSize({ width: 320, height: 640 });
        await new Promise((done) => setTimeout(done, 200));
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        if (wide > 320) found.push(`${place}: ${wide} px wide`);
      }
      expect(found).toEqual([]);
    },
    60_000,
  );
});
