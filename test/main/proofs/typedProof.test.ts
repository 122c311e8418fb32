import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { astmE74Table } from "../../../app/proof/tables/astmE74Table.ts";
import table from "../../../app/proof/tables/iso376.json" with { type: "json" };
import { iso376Table } from "../../../app/proof/tables/iso376Table.ts";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";
import { quickPlan, type Shows, saveTyped, typeThrough } from "../../support/proofWorks.ts";

/** A gauge that shows 0.4 % too much, 3 N at rest, with a few newtons from run to run. */
const shows: Shows = (forceN, run) => forceN * (1.004 + 2e-5 * Number(run)) + 3;

describe("a proof typed in", () => {
  let core: CoreInTemp;
  let gaugeId: string;
  let spindleId: string;
  let referenceId: string;
  beforeAll(async () => {
    core = await coreInTemp();
    ({ gaugeId, spindleId } = await smallWorks(core));
    referenceId = await saveTyped(core);
  });
  afterAll(() => core.close());

  it("is led to its end, filed with its class, and the gauge is corrected with its curve from then on", async () => {
    const plan = quickPlan("iso376", 30_000);
    const begun = await core.call("proof.start", {
      gaugeId,
      referenceId,
      as: "found",
      plan,
      gaugeRead: "typed",
      choices: { resolutionN: 1 },
    });
    const done = await typeThrough(core, begun, shows);
    expect(done.next.kind).toBe("finished");
    const outcome = await core.call("proof.result", { proofId: done.proofId });
    expect(outcome).toMatchObject({ judged: "good", finished: true, refused: undefined });
    const page = await core.call("proof.file", { proofId: done.proofId });
    // Errors are those of class 00, but a reference good to 0.02 % (k = 2) gives no better than 0.5 (ISO 376:2011, table 2, from memory).
    expect(page.proof.result?.class).toBe("0.5");
    expect(page.row).toMatchObject({ curveTaken: true, inUse: true });
    const [row] = await core.call("gauges.list");
    expect(row?.proofState).toBe("current");
    expect(row?.gauge.curve?.proofId).toBe(done.proofId);
    // 0.4 % too much on the display is 0.4 % less in force: 18.072 kN shown are 18.000 kN.
    await core.call("series.tag", { seriesId: (await core.call("state.snapshot")).draft.seriesId, gaugeId });
    const { row: check } = await fileTyped(core, spindleId, "18.072 kN");
    expect(check.valueN).toBeCloseTo(18_000, -1.5);
    const { check: filed } = await core.call("checks.get", { checkId: check.checkId });
    expect(filed.corrections.curve?.proofId).toBe(done.proofId);
    expect(filed.weakenedBy.map((w) => w.code)).not.toContain("gaugeUnproved");
  });

  it("is classed by the laboratory's own table once that is filed, and not by one that cannot be", async () => {
    const shipped = { ...table, standard: "our edition", fromMemory: false };
    const spoilt = { ...shipped, smallestForceShare: 0 };
    await expect(core.call("proofs.saveTable", { table: "iso376", value: spoilt })).rejects.toThrow(
      /smallestForceShare/,
    );
    // A reference of 0.02 % meets a class 00 that allows 0.03 %.
    const classes = shipped.classes.map((c) => (c.class === "00" ? { ...c, referenceExpanded: 0.03 } : c));
    await core.call("proofs.saveTable", { table: "iso376", value: { ...shipped, classes } });
    expect(await core.call("proofs.tables")).toEqual([
      { table: "iso376", value: { ...shipped, classes }, own: true },
      { table: "astmE74", value: astmE74Table, own: false },
    ]);
    const plan = quickPlan("iso376", 30_000);
    const begun = await core.call("proof.start", {
      gaugeId,
      referenceId,
      as: "found",
      plan,
      gaugeRead: "typed",
      choices: { resolutionN: 1 },
    });
    const done = await typeThrough(core, begun, shows);
    const { proof } = await core.call("proof.file", { proofId: done.proofId });
    expect(proof.result?.class).toBe("00");
    expect(proof.result?.remarks.map((r) => r.code)).not.toContain("tableFromMemory");
    expect(proof.result?.remarks).toContainEqual({ code: "tableEntered", about: "our edition" });
    await core.call("proofs.saveTable", { table: "iso376", value: null });
    expect((await core.call("proofs.tables"))[0]).toEqual({ table: "iso376", value: iso376Table, own: false });
  });
});
