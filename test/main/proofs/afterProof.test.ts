import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type CoreInTemp, coreInTemp, smallWorks } from "../../support/coreInTemp.ts";
import { aRig, quickPlan, type Shows, saveTyped, typeThrough } from "../../support/proofWorks.ts";

/** What a gauge of this gain shows, seats a little different from run to run. */
const gauge =
  (gain: number): Shows =>
  (forceN, run) =>
    forceN * gain * (1 + 2e-5 * Number(run)) + 2;

const DAY = 86_400_000;

describe("what follows from proofs", () => {
  let core: CoreInTemp;
  let nowMs = Date.parse("2024-03-04T08:00:00.000Z");
  let gaugeId: string;
  let spindleId: string;
  let adapterId: string;
  let referenceId: string;

  const prove = async (gain: number, as: "found" | "left", more: { adapterId?: string } = {}) => {
    const plan = quickPlan("iso376", 30_000);
    const begun = await core.call("proof.start", {
      ...{ gaugeId, referenceId, as, plan, gaugeRead: "typed" as const, choices: { resolutionN: 1 } },
      ...more,
    });
    const done = await typeThrough(core, begun, gauge(gain));
    const outcome = await core.call("proof.result", { proofId: done.proofId });
    nowMs += 1_000;
    return { outcome, page: await core.call("proof.file", { proofId: done.proofId }) };
  };
  const check = async (text: string) => {
    nowMs += DAY;
    const { seriesId } = (await core.call("state.snapshot")).draft;
    await core.call("series.tag", { seriesId, gaugeId });
    await core.call("series.tag", { seriesId, spindleId });
    const { draft } = await core.call("state.snapshot");
    for (const { code } of draft.warnings.filter((w) => w.weight === "ask"))
      await core.call("series.override", { seriesId, code, reason: "no other gauge here" });
    await core.call("series.type", { seriesId, text });
    return (await core.call("series.accept", { seriesId, spindleId })).row;
  };
  const gaugeNow = async () => (await core.call("gauges.list"))[0]!;

  beforeAll(async () => {
    core = await coreInTemp({ now: () => nowMs });
    ({ gaugeId, spindleId, adapterId } = await smallWorks(core));
    referenceId = await saveTyped(core);
  });
  afterAll(() => core.close());

  it("a gauge found off: its checks since the last good proof are listed with what they would say, and marked", async () => {
    const first = await prove(1, "found");
    expect(first.outcome).toMatchObject({ judged: "good", change: null, nextDue: { reason: "firstProof", days: 365 } });
    expect((await gaugeNow()).gauge.dueOn).toBe("2025-03-04");
    const before = await check("18.0 kN");
    await check("16.0 kN"); // truly 15.1 kN: under the warning, above the minimum
    const low = await check("15.0 kN"); // truly 14.15 kN: under the minimum
    nowMs += 200 * DAY;
    const found = await prove(1.06, "found"); // somebody dropped it: it shows 6 % too much
    expect(found.outcome.judged).toBe("off");
    expect(found.outcome.change?.relative).toBeCloseTo(1 / 1.06 - 1, 3);
    expect(found.page.row.curveTaken).toBe(false); // not without being asked for
    const { proofId } = found.page.proof;
    const view = await core.call("proofs.affected", { proofId });
    expect(view.since?.proofId).toBe(first.page.proof.proofId);
    expect(view.rows).toHaveLength(3);
    expect(view.changedCount).toBe(view.rows.filter((r) => r.verdictChanges).length);
    const ofLow = view.rows.find((r) => r.checkId === low.checkId)!;
    expect(ofLow).toMatchObject({ wouldBe: "stop", verdictChanges: true, marked: false, spindleName: "Mill 3" });
    expect(ofLow.correctedN! / (15_000 / 1.06)).toBeCloseTo(1, 3);
    expect(ofLow.filedVerdict).not.toBe("stop");
    const { marked } = await core.call("proofs.markRemeasure", {
      checkIds: [low.checkId, low.checkId],
      reason: "gauge found 6 % off",
    });
    expect(marked).toBe(1);
    const again = await core.call("proofs.affected", { proofId });
    expect(again.rows.filter((r) => r.marked).map((r) => r.checkId)).toEqual([low.checkId]);
    const { check: filed, row } = await core.call("checks.get", { checkId: low.checkId });
    expect([filed.verdict, row.valueN]).toEqual([ofLow.filedVerdict, ofLow.filedN]); // nothing filed is rewritten
    expect((await core.call("checks.get", { checkId: before.checkId })).check.corrections.curve?.proofId).toBe(
      first.page.proof.proofId,
    );
  });

  it("an adjustment voids the curve until the gauge is proved as left, and is no drift", async () => {
    const [off] = (await core.call("proofs.list", { gaugeId })).rows;
    const adjustment = await core.call("adjustments.save", {
      gaugeId,
      what: "span set anew",
      asFoundProofId: off!.proofId,
    });
    expect((await gaugeNow()).proofState).toBe("none");
    expect((await gaugeNow()).gauge.curve).toBeUndefined();
    const unproved = await check("18.0 kN");
    const { check: filed } = await core.call("checks.get", { checkId: unproved.checkId });
    expect(filed.weakenedBy).toContainEqual({ code: "gaugeUnproved", about: "Gauge 1" });
    const left = await prove(1.0002, "left");
    expect(left.outcome.judged).toBe("good");
    expect(left.page).toMatchObject({ adjustment, other: { proofId: off!.proofId }, row: { as: "left", inUse: true } });
    expect(left.page.proof.curve?.version).toBeGreaterThan(off === undefined ? 0 : 2);
    const { drift, nextDue } = left.page;
    expect(drift.steps).toHaveLength(1); // from the first proof to as found; the adjustment is none
    expect(drift.steps[0]?.worst.relative).toBeCloseTo(1 / 1.06 - 1, 3);
    // Beyond the allowed change the interval is halved (staircase of ILAC-G24, from memory).
    expect(nextDue).toMatchObject({ reason: "beyondAllowed", days: 183 });
    expect((await gaugeNow()).gauge.dueOn).toBe(nextDue?.on);
    const [newest, foundRow] = (await core.call("proofs.list", { gaugeId })).rows;
    expect([newest?.as, foundRow?.as, foundRow?.inUse]).toEqual(["left", "found", false]);
    expect((await core.call("proofs.get", { proofId: off!.proofId })).other?.proofId).toBe(newest?.proofId);
  });

  it("a proof past its due date weakens the next verdict, and says so", async () => {
    nowMs += 400 * DAY;
    expect((await gaugeNow()).proofState).toBe("pastDue");
    const late = await check("18.0 kN");
    const { check: filed } = await core.call("checks.get", { checkId: late.checkId });
    expect(filed.weakenedBy).toContainEqual({ code: "proofPastDue", about: "Gauge 1" });
  });

  it("an adapter's factor comes from proofs with and without it, and becomes its next version", async () => {
    const without = await prove(1.0002, "found");
    const withIt = await prove(1.0002 / 1.012, "found", { adapterId });
    expect(withIt.page.proof.curveRefused).toMatch(/adapter/);
    expect(withIt.page.proof.curveRefusedWhy).toEqual({ code: "withAdapter", figures: [] });
    expect(without.page.proof.curveRefusedWhy).toBeUndefined();
    expect(withIt.page.row.curveTaken).toBe(false);
    const from = { withoutProofId: without.page.proof.proofId, withProofId: withIt.page.proof.proofId };
    const tried = await core.call("adapters.factor", { adapterId, from, file: false });
    expect(tried.factor?.scale).toBeCloseTo(1.012, 4);
    expect(tried.filed).toBeUndefined();
    const { filed } = await core.call("adapters.factor", { adapterId, from, file: true, dueOn: "2027-01-01" });
    expect(filed?.adapter).toMatchObject({
      version: 2,
      assumed: false,
      scale: tried.factor?.scale,
      dueOn: "2027-01-01",
    });
    const one = { run: "1", without: { referenceN: 10, netN: 10 }, withIt: { referenceN: 10, netN: 9.9 } };
    const refused = await core.call("adapters.factor", { adapterId, from: { pairs: [one] }, file: true });
    expect(refused).toMatchObject({ refused: expect.stringContaining("at least two runs") });
    const view = await core.call("proofs.affected", { adapterId, scale: 1.05, relative: 0.001 });
    expect(view.rows).toEqual([]); // no check was made with its new scale yet
    const filedNow = { adapterId, scale: filed!.adapter.scale, relative: filed!.adapter.scaleUncertainty };
    const before = await core.call("proofs.affected", filedNow);
    expect(before.rows).toHaveLength(5); // all those made with the old one
    for (const row of before.rows) expect(row.relative).toBeCloseTo(0.012, 3);
    expect(tried.change).toMatchObject({ scale: 1, version: 1, off: true });
    expect(tried.change!.relative).toBeCloseTo(0.012, 4);
    expect(before.since).toBeUndefined();
  });

  it("an adapter found off puts the checks since its last good scale in doubt, and they are marked, not rewritten", async () => {
    const late = await check("18.0 kN");
    const early = (await core.call("adapters.list")).find(({ adapter }) => adapter.adapterId === adapterId)!.adapter;
    const pair = (run: string, netN: number) => ({
      run,
      without: { referenceN: 10_000, netN: 10_000 },
      withIt: { referenceN: 10_000, netN },
    });
    const from = { pairs: [pair("1", 20_000), pair("2", 20_010), pair("3", 19_990)] };
    const { adapter: plain } = await core.call("adapters.save", {
      ...{
        name: "New",
        taper: "HSK-A 63",
        scale: 1,
        scaleUncertainty: 0.01,
        assumed: true,
        version: 1,
        state: "inUse",
      },
    });
    const first = await core.call("adapters.factor", { adapterId: plain.adapterId, from, file: false });
    expect(first.change).toBeUndefined(); // nobody had calibrated it: there is no scale to be off from
    const tried = await core.call("adapters.factor", { adapterId, from, file: false });
    // 10 kN over 20 kN is half of it: far off the scale it has.
    expect(tried.change).toMatchObject({ off: true, scale: early.scale, version: 2 });
    expect(tried.change!.relative).toBeCloseTo(0.5 / early.scale - 1, 3);
    const { factor } = tried;
    const doubt = { adapterId, scale: factor!.scale, relative: factor!.relative };
    const view = await core.call("proofs.affected", doubt);
    expect(view.since).toEqual({ on: early.calibratedOn });
    expect(view.rows.map(({ checkId }) => checkId)).toEqual([late.checkId]); // not those made with the scale before
    expect(view.rows[0]).toMatchObject({ verdictChanges: true, marked: false });
    expect(view.rows[0]!.correctedN! / view.rows[0]!.filedN!).toBeCloseTo(factor!.scale / early.scale, 6);
    const { filed } = await core.call("adapters.factor", { adapterId, from, file: true });
    expect(filed?.adapter.version).toBe(3);
    const after = await core.call("proofs.affected", doubt); // the same list once it is filed
    expect(after.rows.map(({ checkId }) => checkId)).toEqual([late.checkId]);
    expect(after.since).toEqual({ on: early.calibratedOn });
    await core.call("proofs.markRemeasure", { checkIds: [late.checkId], reason: "adapter found off" });
    expect((await core.call("proofs.affected", doubt)).rows[0]).toMatchObject({ marked: true });
    const { check: still } = await core.call("checks.get", { checkId: late.checkId });
    expect([still.valueN, still.verdict]).toEqual([view.rows[0]!.filedN, view.rows[0]!.filedVerdict]);
  });

  it("weights say which to hang, and their force is mass times gravity less the air's lift", async () => {
    const { reference } = await core.call("references.save", {
      name: "Stack",
      kind: "weights",
      weights: aRig(),
      state: "inUse",
    });
    const plan = quickPlan("working", 30_000, { loadsN: [1_000, 3_000, 5_000], preloads: 0 });
    const begun = await core.call("proof.start", {
      ...{ gaugeId, referenceId: reference.referenceId, as: "found" as const, plan, gaugeRead: "typed" as const },
      conditions: { temperatureC: 20, pressurePa: 101_325, humidity: 0.5, temperatureRangeK: 1 },
      choices: { mpe: { kind: "relative", fraction: 0.01 } },
    });
    const atFirst = await typeThrough(
      core,
      begun,
      gauge(1),
      (p) => p.next.kind === "act" && p.next.act.kind === "read" && p.next.act.step === 1,
    );
    expect(atFirst.hang?.labels).toEqual(["H"]);
    // 100 kg conventional at 48 degrees and 300 m: g = 9.8080 m/s2 (WGS84), lift 1.2/8000 of it by definition of the conventional mass.
    expect(atFirst.hang!.forceN / (100 * 9.808 * (1 - 1.2 / 8_000))).toBeCloseTo(1, 4);
    await expect(
      core.call("proof.type", {
        proofId: atFirst.proofId,
        index: atFirst.next.kind === "act" ? atFirst.next.index : 0,
        indication: "980 N",
        weights: ["H", "Z"],
      }),
    ).rejects.toThrow(/no weight labelled Z/);
    const done = await typeThrough(core, atFirst, gauge(1));
    const { proof } = await core.call("proof.file", { proofId: done.proofId, takeCurve: false });
    expect(proof.result?.conformity).toBe("conforming");
    expect(proof.site?.gravity).toBeCloseTo(9.808, 3);
    expect(proof.takings.find((t) => t.step === 2)?.weights).toEqual(["H", "A", "B"]);
  });
});
