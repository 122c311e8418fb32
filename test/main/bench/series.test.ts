import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";

let core: CoreInTemp;
let works: Awaited<ReturnType<typeof smallWorks>>;

beforeEach(async () => {
  core = await coreInTemp();
  works = await smallWorks(core);
});
afterEach(() => core.close());

const draft = async () => (await core.call("state.snapshot")).draft;
const refusal = (attempt: Promise<unknown>) =>
  attempt.then(
    () => "accepted",
    (error: { failure?: { code: string; key?: string } }) => error.failure?.key ?? error.failure?.code,
  );

describe("the series in work", () => {
  it("begins without a spindle, and proposes the one adapter that fits the spindle chosen", async () => {
    const empty = await draft();
    expect(empty.tag).toEqual({});
    expect(empty.cannotFile).toBe("nothingMeasured");
    const tagged = await core.call("series.tag", { seriesId: empty.seriesId, spindleId: works.spindleId });
    expect(tagged.tag.adapterId).toBe(works.adapterId);
  });

  it("files a typed value with its verdict, its budget and the text as it was typed", async () => {
    const { row } = await fileTyped(core, works.spindleId, "17,92 kN");
    expect(row).toMatchObject({ valueN: 17_920, verdict: "good", basis: "typed", isBaseline: true });
    const { check } = await core.call("checks.get", { checkId: row.checkId });
    expect(check.rawLine).toBe("17,92 kN");
    expect(check.weakenedBy.map((r) => r.code)).toContain("typedValue");
    expect(check.budget!.contributions.find((c) => c.source === "resolution")!.standardN).toBeCloseTo(
      10 / Math.sqrt(12),
      6,
    );
  });

  it.each([
    ["12 Nm", "force.torque"],
    ["17.9", "force.bare"],
    ["17.9 kg", "force.mass"],
    ["seventeen", "force.unreadable"],
    ["0 kN", "force.notPositive"],
  ])("refuses %s and keeps the series as it was", async (text, key) => {
    const { seriesId } = await draft();
    expect(await refusal(core.call("series.type", { seriesId, text }))).toBe(key);
    expect((await draft()).typed).toBeUndefined();
  });

  it("judges by limits and by the fall from the baseline", async () => {
    await fileTyped(core, works.spindleId, "19.5 kN");
    expect((await fileTyped(core, works.spindleId, "17.4 kN")).row.verdict).toBe("watch"); // 10.8 % down
    expect((await fileTyped(core, works.spindleId, "15.5 kN")).row.verdict).toBe("act"); // 20.5 % down
    const stop = await fileTyped(core, works.spindleId, "13.0 kN");
    expect(stop.row.verdict).toBe("stop");
    expect((await core.call("spindles.list"))[0]).toMatchObject({ verdict: "stop", stopped: true });
  });

  it("keeps a stop on the spindle until it is released by name with a better check made after it", async () => {
    const first = await fileTyped(core, works.spindleId, "13.0 kN");
    const { operatorId } = await core.call("operators.save", { name: "Ada Planner", role: "planner", state: "inUse" });
    const release = (checkId: string) =>
      core.call("stop.release", { spindleId: works.spindleId, checkId, operatorId, reason: "springs renewed" });
    expect(await refusal(release(first.row.checkId))).toBe("stopNeedsCheck");
    await new Promise((done) => setTimeout(done, 5));
    const after = await fileTyped(core, works.spindleId, "18.0 kN", "afterService");
    expect((await core.call("spindles.list"))[0]!.stopped).toBe(true);
    expect((await release(after.row.checkId)).stopped).toBe(false);
  });

  it("answers the check already filed when two pages accept the same series at the same time", async () => {
    const { seriesId } = await draft();
    await core.call("series.tag", { seriesId, spindleId: works.spindleId });
    await core.call("series.type", { seriesId, text: "18 kN" });
    const accept = () => core.call("series.accept", { seriesId, spindleId: works.spindleId });
    const both = await Promise.all([accept(), accept()]);
    expect(both.map((a) => a.row.checkId)).toEqual([seriesId, seriesId]);
    expect(both.map((a) => a.again).sort()).toEqual([false, true]);
    expect((await accept()).again).toBe(true);
    expect((await core.call("spindles.list"))[0]!.checkCount).toBe(1);
  });

  it("refuses to file when another page has changed the spindle in the tag", async () => {
    const { seriesId } = await draft();
    const other = await core.call("spindles.save", {
      name: "Lathe 4",
      machine: "",
      area: "",
      taper: "HSK-A63",
      limits: {},
      state: "inUse",
    });
    await core.call("series.tag", { seriesId, spindleId: other.spindle.spindleId });
    await core.call("series.type", { seriesId, text: "18 kN" });
    expect(await refusal(core.call("series.accept", { seriesId, spindleId: works.spindleId }))).toBe("tagChanged");
    expect((await draft()).typed?.valueN).toBe(18_000);
  });

  it("takes a check back within the minute by one act, and not after it", async () => {
    let nowMs = Date.parse("2026-03-01T08:00:00.000Z");
    const timed = await coreInTemp({ now: () => nowMs });
    const { spindleId } = await smallWorks(timed);
    const first = await fileTyped(timed, spindleId, "18 kN");
    nowMs += 30_000;
    expect((await timed.call("checks.undo", { checkId: first.row.checkId })).checkCount).toBe(0);
    const second = await fileTyped(timed, spindleId, "18 kN");
    nowMs += 60_001;
    expect(await refusal(timed.call("checks.undo", { checkId: second.row.checkId }))).toBe("undoOver");
    await timed.close();
  });

  it("asks about a clock that stands before the last entry, and marks the check when told to go on", async () => {
    let nowMs = Date.parse("2026-03-01T08:00:00.000Z");
    const timed = await coreInTemp({ now: () => nowMs });
    const { spindleId } = await smallWorks(timed);
    await fileTyped(timed, spindleId, "18 kN");
    nowMs -= 86_400_000;
    const { seriesId } = (await timed.call("state.snapshot")).draft;
    await timed.call("series.tag", { seriesId, spindleId });
    await timed.call("series.type", { seriesId, text: "17.8 kN" });
    expect(await refusal(timed.call("series.accept", { seriesId, spindleId }))).toBe("clockBehind");
    const { row } = await timed.call("series.accept", { seriesId, spindleId, clockConfirmed: true });
    expect((await timed.call("checks.get", { checkId: row.checkId })).check.clockDoubtful).toBe(true);
    await timed.close();
  });

  it("blocks an adapter of the wrong taper and a force beyond the gauge's capacity, whatever reason is given", async () => {
    const { seriesId } = await draft();
    const wrong = await core.call("adapters.save", {
      name: "SK50-1",
      taper: "SK50",
      scale: 1,
      scaleUncertainty: 0.001,
      assumed: false,
      version: 1,
      state: "inUse",
    });
    const small = await core.call("gauges.save", { name: "Gauge 2", capacityN: 10_000, state: "inUse" });
    const tagged = await core.call("series.tag", {
      seriesId,
      spindleId: works.spindleId,
      adapterId: wrong.adapter.adapterId,
      gaugeId: small.gauge.gaugeId,
    });
    expect(tagged.warnings.filter((w) => w.weight === "block").map((w) => w.code)).toEqual([
      "taperMismatch",
      "overCapacity",
    ]);
    expect(tagged.cannotFile).toBe("blocked");
    expect(await refusal(core.call("series.override", { seriesId, code: "taperMismatch", reason: "because" }))).toBe(
      "overrideRefused",
    );
  });

  it("asks a reason for a proof past its date and keeps it with the check", async () => {
    const { seriesId } = await draft();
    const stale = await core.call("gauges.save", {
      name: "Gauge 3",
      capacityN: 30_000,
      provedOn: "2020-01-01",
      dueOn: "2021-01-01",
      state: "inUse",
    });
    await core.call("series.tag", { seriesId, spindleId: works.spindleId, gaugeId: stale.gauge.gaugeId });
    const typed = await core.call("series.type", { seriesId, text: "18 kN" });
    expect(typed.cannotFile).toBe("reasonWanted");
    const told = await core.call("series.override", {
      seriesId,
      code: "proofPastDue",
      reason: "the other gauge is away",
    });
    expect(told.cannotFile).toBeUndefined();
    const { row } = await core.call("series.accept", { seriesId, spindleId: works.spindleId });
    const { check } = await core.call("checks.get", { checkId: row.checkId });
    expect(check.warnings).toContainEqual({
      code: "proofPastDue",
      about: "2021-01-01",
      overriddenWith: "the other gauge is away",
    });
  });

  it("finds the series again after a restart", async () => {
    const folder = mkdtempSync(join(tmpdir(), "holdfast-again-"));
    const first = await coreInTemp({ folder });
    const { spindleId } = await smallWorks(first);
    const { seriesId } = (await first.call("state.snapshot")).draft;
    await first.call("series.tag", { seriesId, spindleId });
    await first.call("series.describe", { seriesId, reason: "afterCrash", note: "heard a knock", spindleWarm: true });
    await first.call("series.type", { seriesId, text: "17.1 kN" });
    await first.close();
    const second = await coreInTemp({ folder });
    expect((await second.call("state.snapshot")).draft).toMatchObject({
      seriesId,
      tag: { spindleId },
      reason: "afterCrash",
      note: "heard a knock",
      spindleWarm: true,
      typed: { valueN: 17_100 },
    });
    await second.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it("refuses two spindles of one name and two adapters of one serial number, and limits that do not rise", async () => {
    const spindle = { machine: "", area: "", taper: "SK40", limits: {}, state: "inUse" } as const;
    expect(await refusal(core.call("spindles.save", { ...spindle, name: "mill 3 " }))).toBe("twin.name");
    const adapter = {
      taper: "SK40",
      scale: 1,
      scaleUncertainty: 0.001,
      assumed: false,
      version: 1,
      state: "inUse",
      serial: "77",
    } as const;
    await core.call("adapters.save", { ...adapter, name: "B1" });
    expect(await refusal(core.call("adapters.save", { ...adapter, name: "B2" }))).toBe("twin.serial");
    expect(
      await refusal(core.call("spindles.save", { ...spindle, name: "X", limits: { minimumN: 5, nominalN: 4 } })),
    ).toBe("invalid");
    expect(await refusal(core.call("adapters.save", { ...adapter, name: "B3", serial: "78", scale: 0 }))).toBe(
      "invalid",
    );
    expect(await refusal(core.call("spindles.save", { ...spindle, name: "  " }))).toBe("invalid");
  });
});

const isRoot = process.getuid?.() === 0;
if (isRoot && process.env.HOLDFAST_REQUIRE_USER !== "1")
  console.warn("SKIPPED: a data file that cannot be written, because root may write every file");

describe("a data file that cannot be written", () => {
  it.skipIf(isRoot && process.env.HOLDFAST_REQUIRE_USER !== "1")(
    "is opened for reading, says so, and refuses to file in plain words",
    async () => {
      const folder = mkdtempSync(join(tmpdir(), "holdfast-readonly-"));
      const first = await coreInTemp({ folder });
      const { spindleId } = await smallWorks(first);
      await first.close();
      chmodSync(first.dataFile, 0o400);
      chmodSync(folder, 0o500);
      const second = await coreInTemp({ folder });
      const snapshot = await second.call("state.snapshot");
      expect(snapshot.program.readOnly).toMatch(/cannot be written/);
      expect(snapshot.draft.cannotFile).toBe("readOnly");
      expect(await refusal(second.call("series.accept", { seriesId: snapshot.draft.seriesId, spindleId }))).not.toBe(
        "accepted",
      );
      await second.close();
      chmodSync(folder, 0o700);
      rmSync(folder, { recursive: true, force: true });
    },
  );
});
