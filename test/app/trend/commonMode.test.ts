import { describe, expect, it } from "vitest";
import { commonModes } from "../../../app/trend/commonMode.ts";
import type { History } from "../../../app/trend/History.ts";
import { seededNormal, seededUniform } from "../../support/seededNormal.ts";
import { DAY_MS, FIRST_MS } from "../../support/spindleHistory.ts";
import { type WorksOptions, worksOfSpindles } from "../../support/worksOfSpindles.ts";

const works = (options: WorksOptions, seed = 71) =>
  worksOfSpindles(seededNormal(seed), seededUniform(seed + 1), options);

describe("commonModes", () => {
  it("names a gauge that went off, since when, how far, and on which spindles", () => {
    const histories = works({ spindles: 12, checks: 12, gauges: 2, off: "gauge-1", since: 10, shift: -0.04 });
    const found = commonModes(histories);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ by: "gauge", id: "gauge-1", or: [], spindles: 6 });
    expect(Math.abs(found[0]!.sinceMs - (FIRST_MS + 900 * DAY_MS)) / DAY_MS).toBeLessThan(10);
    expect(Math.abs(found[0]!.shift + 0.04)).toBeLessThan(0.015);
    expect(found[0]!.spindleIds.every((id) => Number(id.split("-")[1]) % 2 === 1)).toBe(true);
    expect(found[0]!.p).toBeLessThan(0.01);
  });

  it("names the adapter, not the gauge, when only its spindles moved", () => {
    const found = commonModes(works({ spindles: 16, checks: 12, adapters: 2, off: "adapter-1", shift: -0.05 }));
    expect(found.map((m) => [m.by, m.id])).toEqual([["adapter", "adapter-1"]]);
  });

  it("says which others the same spindles have in common", () => {
    const found = commonModes(works({ spindles: 8, checks: 12, off: "gauge-0", shift: -0.05 }));
    expect(found).toMatchObject([{ by: "gauge", id: "gauge-0", or: [{ by: "adapter", id: "adapter-0" }] }]);
  });

  it("sees a rise as well as a fall", () => {
    expect(commonModes(works({ spindles: 10, checks: 12, off: "gauge-0", shift: 0.05 }))[0]!.shift).toBeGreaterThan(
      0.03,
    );
  });

  it("names a gauge newly taken into use that reads off", () => {
    const histories = works({ spindles: 10, checks: 12, gauges: 1 }).map((h) => ({
      ...h,
      points: h.points.map((p, i) => (i === 11 ? { ...p, gaugeId: "gauge-new", valueN: p.valueN * 0.95 } : p)),
    }));
    expect(commonModes(histories)[0]).toMatchObject({ by: "gauge", id: "gauge-new" });
  });

  it("blames nobody when nothing is shared: tired spindles, a few broken springs", () => {
    let blamed = 0;
    for (let run = 0; run < 100; run += 1) {
      if (
        commonModes(works({ spindles: 12, checks: 12, gauges: 2, adapters: 2, broken: 0.1 }, 100 + 2 * run)).length > 0
      )
        blamed += 1;
    }
    expect(blamed).toBeLessThanOrEqual(4);
  });

  it("does not take services for a move: the checks before and after one are not compared", () => {
    const histories = works({ spindles: 10, checks: 12 }).map(
      (h): History => ({
        ...h,
        points: h.points.map((p, i) => (i >= 8 ? { ...p, valueN: p.valueN * 1.08 } : p)),
        events: [{ atMs: h.points[8]!.atMs - 2 * DAY_MS, kind: "lubricated", newBaseline: true }],
      }),
    );
    expect(commonModes(histories)).toEqual([]);
  });

  it("does not look farther back than asked", () => {
    const histories = works({ spindles: 10, checks: 14, off: "gauge-0", since: 4, shift: -0.05 });
    expect(commonModes(histories)).toEqual([]);
    expect(commonModes(histories, { lookBackDays: 4000 })).toMatchObject([{ id: "gauge-0" }]);
  });

  it("has nothing to say of few spindles, of checks without a gauge, of none", () => {
    expect(commonModes(works({ spindles: 4, checks: 12, off: "gauge-0", shift: -0.1 }))).toEqual([]);
    const bare = works({ spindles: 8, checks: 12, off: "gauge-0", shift: -0.1 }).map((h) => ({
      ...h,
      points: h.points.map((p) => ({ ...p, gaugeId: undefined, adapterId: undefined })),
    }));
    expect(commonModes(bare)).toEqual([]);
    expect(commonModes([])).toEqual([]);
  });
});
