import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { GaugeProofs } from "../../../app/contract/proofViews.ts";
import { type CoreInTemp, coreInTemp } from "../../support/coreInTemp.ts";

describe("the proofs of the demo works", () => {
  let core: CoreInTemp;
  const of = new Map<string, GaugeProofs>();
  beforeAll(async () => {
    core = await coreInTemp({ demo: true });
    for (const { gauge } of await core.call("gauges.list"))
      of.set(gauge.name, await core.call("proofs.list", { gaugeId: gauge.gaugeId }));
  }, 120_000);
  afterAll(() => core.close());

  it("are three a gauge, good and in use, but for the last of the gauge whose spindles moved together", async () => {
    expect([...of.values()].map((p) => p.rows.length)).toEqual([3, 3, 3]);
    for (const name of ["Gauge 1", "Gauge 3"]) {
      expect(of.get(name)?.rows.map((r) => [r.judged, r.curveTaken, r.inUse])).toEqual([
        ["good", true, true],
        ["good", true, false],
        ["good", true, false],
      ]);
    }
    const [last, before] = of.get("Gauge 2")!.rows;
    expect(last).toMatchObject({ judged: "off", curveTaken: false });
    // It reads 4.8 % low since it was dropped: what it shows means so much more.
    expect(last?.change?.relative).toBeCloseTo(1 / 0.952 - 1, 2.5);
    expect(before).toMatchObject({ judged: "good", inUse: true });
    expect(of.get("Gauge 1")?.rows[0]?.class).toBe("2");
    const rows = await core.call("gauges.list");
    expect(rows.map((r) => r.proofState)).toEqual(["current", "off", "current"]);
  });

  it("weaken what is still measured with the gauge that was found off, and nothing measured with another", async () => {
    const gauges = await core.call("gauges.list");
    const { spindle } = (await core.call("spindles.list"))[0]!;
    const weakenedBy = async (name: string) => {
      const { seriesId } = (await core.call("state.snapshot")).draft;
      const { gaugeId } = gauges.find((row) => row.gauge.name === name)!.gauge;
      await core.call("series.tag", { seriesId, spindleId: spindle.spindleId, gaugeId });
      const { forming } = await core.call("series.type", { seriesId, text: "18 kN" });
      return forming?.weakenedBy.map(({ code }) => code);
    };
    expect(await weakenedBy("Gauge 2")).toContain("gaugeFoundOff");
    expect(await weakenedBy("Gauge 1")).not.toContain("gaugeFoundOff");
  });

  it("put the checks of the dropped gauge in doubt, and only those say something else by its true curve", async () => {
    const { proofId } = of.get("Gauge 2")!.rows[0]!;
    const view = await core.call("proofs.affected", { proofId });
    expect(view.since?.proofId).toBe(of.get("Gauge 2")!.rows[1]!.proofId);
    expect(view.rows.length).toBeGreaterThan(20);
    const gaugeIds = new Set(view.rows.map((r) => r.row.gaugeId));
    expect(gaugeIds.size).toBe(1);
    for (const row of view.rows) expect(row.relative).toBeCloseTo(1 / 0.952 - 1, 2);
    expect(view.changedCount).toBeGreaterThan(0);
  });

  it("make a page that holds all a report asks for", async () => {
    const { proofId } = of.get("Gauge 1")!.rows[0]!;
    const page = await core.call("proofs.get", { proofId });
    expect(page.proof.result?.steps).toHaveLength(10);
    expect(page.proof.takings).toHaveLength(68);
    expect(page.operatorName).toBe("Operator 1");
    expect(page.proof.reference.certificate).toMatch(/demo/);
    expect(page.drift.steps).toHaveLength(2);
    await core.call("settings.save", { initials: true });
    expect(await core.call("proofs.get", { proofId })).toMatchObject({ operatorName: "O1" });
    await core.call("settings.save", { initials: false });
  });
});
