import { randomUUID } from "node:crypto";
import { mkdtempSync, readdirSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { compactSpool, surveySpool } from "../../../main/link/compactSpool.ts";
import { recover } from "../../../main/link/recover.ts";
import type { SessionSettings } from "../../../main/link/SessionTypes.ts";
import { SpoolWriter } from "../../../main/link/SpoolWriter.ts";
import { keepBounds } from "../../../main/link/spoolBounds.ts";
import { listSpools } from "../../../main/link/spoolFolder.ts";
import { usualGauge } from "../../../simulator/gauge/GaugeOptions.ts";
import { SimulatedGauge } from "../../../simulator/gauge/SimulatedGauge.ts";
import { usualPattern } from "../../support/gaugeLines.ts";
import { ManualClock } from "../../support/ManualClock.ts";

const root = mkdtempSync(join(tmpdir(), "holdfast-bounds-"));
afterAll(() => rmSync(root, { recursive: true }));

const day = 24 * 3_600_000;

/** A spool of long rests with two clampings between them. */
async function quietSpool(folder: string, mark?: "filed", ageMs = 0): Promise<SessionSettings> {
  const settings: SessionSettings = {
    sessionId: randomUUID(),
    source: { kind: "simulated" },
    pattern: usualPattern,
    rateHz: 100,
    capacityN: 30_000,
  };
  const spool = new SpoolWriter({ folder, settings, clock: new ManualClock(), onFailed: () => {} });
  const gauge = new SimulatedGauge(usualGauge);
  const run = (seconds: number) => {
    for (let i = 0; i < seconds * 10; i += 1) spool.bytes(gauge.advance(10));
  };
  for (let i = 0; i < 2; i += 1) {
    run(200);
    gauge.clamp();
    run(5);
    gauge.release();
    run(5);
  }
  run(200);
  if (mark !== undefined) spool.series("series-1", mark);
  await spool.close();
  const { path } = listSpools(folder).find((file) => file.sessionId === settings.sessionId)!;
  const atS = (Date.now() - ageMs) / 1_000;
  utimesSync(path, atS, atS);
  return settings;
}

const folderFor = () => mkdtempSync(join(root, "b-"));
const cyclesOf = async (folder: string, { sessionId }: SessionSettings): Promise<Cycle[]> =>
  (await recover(folder, sessionId))!.cycles.map((c) => c.cycle);

describe("compactSpool", () => {
  it("lets quiet stretches go and keeps every clamping at its place", async () => {
    const folder = folderFor();
    const settings = await quietSpool(folder);
    const before = await cyclesOf(folder, settings);
    const { path, bytes } = listSpools(folder)[0]!;
    const left = await compactSpool(path, await surveySpool(path));
    expect(left).toBe(listSpools(folder)[0]!.bytes);
    expect(left).toBeLessThan(bytes / 5);
    const after = await cyclesOf(folder, settings);
    expect(after).toHaveLength(before.length);
    for (const [i, cycle] of after.entries()) {
      expect(Math.abs(cycle.startIndex - before[i]!.startIndex)).toBeLessThanOrEqual(2);
      expect(Math.abs(cycle.settledN! - before[i]!.settledN!)).toBeLessThan(before[i]!.settledUncertaintyN! * 3);
      expect(cycle.flags).toEqual(before[i]!.flags);
    }
    expect((await recover(folder, settings.sessionId))!.trimmed).toBe(true);
  });

  it("changes nothing the second time", async () => {
    const folder = folderFor();
    await quietSpool(folder);
    const { path } = listSpools(folder)[0]!;
    const once = await compactSpool(path, await surveySpool(path));
    expect(await compactSpool(path, await surveySpool(path))).toBe(once);
  });
});

describe("keepBounds", () => {
  it("leaves everything alone that is within its bounds", async () => {
    const folder = folderFor();
    await quietSpool(folder);
    const [before] = listSpools(folder);
    expect(await keepBounds({ folder, nowMs: Date.now(), inUse: undefined })).toEqual({
      trimmed: false,
      bytes: before!.bytes,
    });
    expect(listSpools(folder)[0]!.bytes).toBe(before!.bytes);
  });

  it("lets go first what is filed, and says nothing of it", async () => {
    const folder = folderFor();
    const filed = await quietSpool(folder, "filed", day);
    const open = await quietSpool(folder);
    const { bytes } = listSpools(folder).at(-1)!;
    const kept = await keepBounds({
      folder,
      nowMs: Date.now(),
      limits: { maxBytes: bytes, maxAgeMs: 7 * day },
      inUse: undefined,
    });
    expect(kept.trimmed).toBe(false);
    expect(listSpools(folder).map((f) => f.sessionId)).toEqual([open.sessionId]);
    expect(filed.sessionId).not.toBe(open.sessionId);
  });

  it("then lets quiet stretches go, the oldest first, and says so", async () => {
    const folder = folderFor();
    const older = await quietSpool(folder, undefined, day);
    const newer = await quietSpool(folder);
    const total = listSpools(folder).reduce((sum, f) => sum + f.bytes, 0);
    const kept = await keepBounds({
      folder,
      nowMs: Date.now(),
      limits: { maxBytes: total * 0.7, maxAgeMs: 7 * day },
      inUse: undefined,
    });
    expect(kept.trimmed).toBe(true);
    expect(kept.bytes).toBeLessThanOrEqual(total * 0.7);
    expect((await recover(folder, older.sessionId))!.trimmed).toBe(true);
    expect((await recover(folder, newer.sessionId))!.trimmed).toBe(false);
    expect(await cyclesOf(folder, older)).toHaveLength(2);
  });

  it("lets whole parts go only when that is not enough, and never the one in use", async () => {
    const folder = folderFor();
    await quietSpool(folder, undefined, day);
    const inUse = await quietSpool(folder);
    const path = listSpools(folder).find((f) => f.sessionId === inUse.sessionId)!.path;
    const kept = await keepBounds({
      folder,
      nowMs: Date.now(),
      limits: { maxBytes: 1_000, maxAgeMs: 7 * day },
      inUse: path,
    });
    expect(kept.trimmed).toBe(true);
    expect(listSpools(folder).map((f) => f.path)).toEqual([path]);
    expect((await recover(folder, inUse.sessionId))!.trimmed).toBe(false);
  });

  it("lets go what is older than its days", async () => {
    const folder = folderFor();
    await quietSpool(folder, undefined, 8 * day);
    expect((await keepBounds({ folder, nowMs: Date.now(), inUse: undefined })).trimmed).toBe(true);
    expect(listSpools(folder)).toEqual([]);
  });

  it("clears away what a kill has left half rewritten", async () => {
    const folder = folderFor();
    await quietSpool(folder);
    const { path } = listSpools(folder)[0]!;
    writeFileSync(`${path}.new`, "half");
    await keepBounds({ folder, nowMs: Date.now(), inUse: undefined });
    expect(readdirSync(folder)).toEqual([basename(path)]);
  });

  it("has nothing to do where there is no spool", async () => {
    expect(await keepBounds({ folder: join(root, "none"), nowMs: 0, inUse: undefined })).toEqual({
      trimmed: false,
      bytes: 0,
    });
  });
});
