import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Works } from "../../../app/ledger/register.ts";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";

let core: CoreInTemp;
let spindleId: string;
let gaugeId: string;
beforeEach(async () => {
  core = await coreInTemp();
  ({ spindleId, gaugeId } = await smallWorks(core));
});
afterEach(() => core.close());

async function assume(assumptions: Works["assumptions"]) {
  const { works } = await core.call("state.snapshot");
  return core.call("works.save", { ...works, assumptions });
}

/** A check of 18 kN at 30 °C, with the gauge: its budget by source, and what weakens it. */
async function filed() {
  const { seriesId } = (await core.call("state.snapshot")).draft;
  await core.call("series.tag", { seriesId, gaugeId });
  await core.call("series.describe", { seriesId, temperatureC: 30 });
  const { row } = await fileTyped(core, spindleId, "18.000 kN");
  const { check } = await core.call("checks.get", { checkId: row.checkId });
  return {
    lines: Object.fromEntries(check.budget!.contributions.map((c) => [c.source, c])),
    remarks: check.weakenedBy,
    budget: check.budget!,
  };
}

describe("what a works takes to be so", () => {
  it("is a default nobody has confirmed until somebody enters it, and each line says so", async () => {
    const { lines } = await filed();
    expect(lines.gaugeProof).toMatchObject({ standardN: 180, assumed: true });
    expect(lines.misalignment!.standardN).toBeCloseTo((18_000 * 0.005) / Math.sqrt(3), 9);
    expect(lines.temperature!.standardN).toBeCloseTo((18_000 * 0.0003 * 10) / Math.sqrt(3), 9);
    expect([lines.misalignment!.assumed, lines.temperature!.assumed]).toEqual([true, true]);
  });

  it("enters every budget with the figure of the works, and is no assumption any more", async () => {
    await assume({ unprovedShare: 0.004, perKelvin: 0.0001, misalignment: 0.002 });
    const { lines, budget } = await filed();
    expect(lines.gaugeProof).toMatchObject({ standardN: 72, assumed: false });
    expect(lines.misalignment!.standardN).toBeCloseTo((18_000 * 0.002) / Math.sqrt(3), 9);
    expect(lines.temperature!.standardN).toBeCloseTo((18_000 * 0.0001 * 10) / Math.sqrt(3), 9);
    expect([lines.misalignment!.assumed, lines.temperature!.assumed]).toEqual([false, false]);
    const squares = budget.contributions.reduce((sum, c) => sum + c.standardN ** 2, 0);
    expect(budget.standardN).toBeCloseTo(Math.sqrt(squares), 9);
  });

  it("takes the greatest change in a year for the time since the proof", async () => {
    const { gauge } = (await core.call("gauges.list"))[0]!;
    const provedOn = new Date(Date.now() - 2 * 365.25 * 86_400_000).toISOString().slice(0, 10);
    const curve = {
      version: 1,
      coefficients: [0, 1],
      fromN: 0,
      toN: 30_000,
      uncertainty: [{ atN: 0, relative: 1e-4 }],
    };
    await core.call("gauges.save", { ...gauge, curve, provedOn });
    await assume({ driftPerYear: 0.01 });
    const { lines, remarks } = await filed();
    expect(lines.drift!.standardN / ((18_000 * 0.01 * 2) / Math.sqrt(3))).toBeCloseTo(1, 2); // to the day
    expect(remarks.map((r) => r.code)).not.toContain("assumedShare");
  });

  it("is named where most of the uncertainty is a default nobody has confirmed", async () => {
    const { gauge } = (await core.call("gauges.list"))[0]!;
    const curve = {
      version: 1,
      coefficients: [0, 1],
      fromN: 0,
      toN: 30_000,
      uncertainty: [{ atN: 0, relative: 1e-4 }],
    };
    await core.call("gauges.save", { ...gauge, curve, provedOn: new Date().toISOString().slice(0, 10) });
    expect((await filed()).remarks).toContainEqual({ code: "assumedShare", about: "misalignment" });
    await assume({ misalignment: 0.005 });
    expect((await filed()).remarks.map((r) => r.code)).not.toContain("assumedShare");
  });

  it.each([0, -0.01, 0.5])(
    "refuses %s as a share: an uncertainty is above zero and no fifth of the force",
    async (misalignment) => {
      await expect(assume({ misalignment })).rejects.toThrow(/invalid: .*(above 0|over 0.2)/);
    },
  );
});
