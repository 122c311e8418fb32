import { describe, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { CycleDetector } from "../../../app/cycle/CycleDetector.ts";
import { clamping, feed, feedInto, type Line, level, ramp } from "./feed.ts";
import { expectFinite, near } from "./near.ts";

describe("a clamping", () => {
  it("gives force, zero and times net of an offset of 2,000 N", () => {
    const { cycles } = feed(clamping(15_000, 4, 2_000));
    expect(cycles).toHaveLength(1);
    const [cycle] = cycles;
    near(cycle!.settledN, 15_000, 3);
    near(cycle!.zeroBeforeN, 2_000, 2);
    near(cycle!.zeroAfterN, 2_000, 2);
    near(cycle!.startS, 2, 0.02);
    near(cycle!.endS, 6.07, 0.02);
    near(cycle!.peakN, 15_000, 15);
    expectFinite(cycle!);
  });

  it("takes its settled force from 1 s to 3 s after the arrival", () => {
    const [cycle] = feed(clamping(15_000, 6)).cycles;
    near(cycle!.settledFromS, 3.03, 0.03);
    near(cycle!.settledToS, 5.03, 0.03);
    expect(cycle!.settledWindow!.n).toBe(200);
    expect(cycle!.flags).not.toContain("short");
  });

  it("uses its steady end and says so when it ends before eight readings from 1 s on", () => {
    const [cycle] = feed(clamping(15_000, 0.6)).cycles;
    expect(cycle!.flags).toContain("short");
    near(cycle!.settledN, 15_000, 5);
  });

  it("carries the readings of rise and fall with it", () => {
    const { cycles, waveforms } = feed(clamping(15_000));
    const [wave] = waveforms;
    expect(wave!.fromIndex).toBeLessThan(cycles[0]!.startIndex);
    expect(wave!.fromIndex + wave!.values.length).toBeGreaterThan(cycles[0]!.endIndex);
    expect(wave!.values[cycles[0]!.startIndex - wave!.fromIndex + 100]).toBeGreaterThan(14_000);
  });

  it("is handed out a second after the release, not at the end of the stream", () => {
    const found: Cycle[] = [];
    const detector = new CycleDetector({ rateHz: 100 }, (cycle) => found.push(cycle));
    feedInto(detector, clamping(15_000).slice(0, -100));
    expect(found).toHaveLength(0);
    feedInto(detector, level(0, 80));
    expect(found).toHaveLength(1);
  });
});

describe("what is no clamping", () => {
  it("is a knock of 3 % of the capacity and 0.25 s, known capacity or not", () => {
    const knock = Array.from({ length: 25 }, (_, i) => 900 * Math.sin((Math.PI * (i + 0.5)) / 25));
    const lines = [...level(0, 300), ...knock, ...level(0, 100), ...Array(25).fill(900), ...level(0, 300)];
    expect(feed(lines, { rateHz: 100, capacityN: 30_000 }).cycles).toEqual([]);
    expect(feed(lines, { rateHz: 100 }).cycles).toEqual([]);
  });

  it("is a single spike, of any size, up or down, and two in a row", () => {
    const lines = [
      ...level(0, 200),
      90_000,
      ...level(0, 100),
      -90_000,
      ...level(0, 100),
      30_000,
      30_000,
      ...level(0, 200),
    ];
    expect(feed(lines).cycles).toEqual([]);
  });

  it("is a zero that drifts away by 1 % of the force in a minute", () => {
    expect(feed(ramp(0, 300, 12_000).map((v, i) => v + level(0, 1, 5, i)[0]!)).cycles).toEqual([]);
  });

  it.each<[string, Line[]]>([
    ["nothing at all", []],
    ["one reading", [5]],
    ["fewer readings than show a rest", [0, 1, 0]],
    ["a constant stream", Array(2000).fill(12_000)],
    ["all overload", Array(2000).fill("overload")],
    ["all rejected", Array(2000).fill("rejected")],
    ["a one-sample cycle", [...level(0, 200), 15_000, ...level(0, 200)]],
    ["readings that are not finite", Array(100).fill(Number.NaN)],
  ])("is %s", (_, lines) => {
    expect(feed(lines).cycles).toEqual([]);
    expect(feed(lines, {}).cycles).toEqual([]);
  });
});

describe("spikes in a hold", () => {
  it("are left out as samples: the settled force and the peak know nothing of them", () => {
    const lines = clamping(15_000);
    lines[400] = 40_000;
    lines[450] = -3_000;
    const [cycle] = feed(lines).cycles;
    near(cycle!.peakN, 15_000, 15);
    near(cycle!.settledN, 15_000, 3);
    expect(cycle!.flags).toContain("spike");
  });

  it("are two readings in a row no longer: they are the peak", () => {
    const lines = clamping(15_000);
    lines[400] = 17_000;
    lines[401] = 17_000;
    const [cycle] = feed(lines).cycles;
    near(cycle!.peakN, 17_000, 60);
    expect(cycle!.flags).not.toContain("spike");
  });
});

describe("the live state", () => {
  it("says what the force does", () => {
    const detector = new CycleDetector({ rateHz: 100 }, () => {});
    expect(detector.live.word).toBe("none");
    feedInto(detector, level(30, 200));
    expect(detector.live.word).toBe("atRest");
    near(detector.live.zeroN, 30, 3);
    feedInto(detector, ramp(30, 15_030, 20));
    expect(detector.live.word).toBe("rising");
    feedInto(detector, level(15_030, 200));
    expect(detector.live.word).toBe("holding");
    near(detector.live.forceN, 15_000, 25);
    near(detector.live.holdingS, 2.2, 0.1);
    detector.push(0, "overload", Number.NaN);
    expect(detector.live).toMatchObject({ word: "overload", forceN: undefined, indicationN: undefined });
    feedInto(detector, level(15_030, 10));
    feedInto(detector, ramp(15_030, 30, 10));
    feedInto(detector, level(30, 200));
    expect(detector.live.word).toBe("atRest");
    near(detector.live.greatestN, 15_000, 40);
  });
});

describe("options", () => {
  it.each([{ rateHz: 0 }, { capacityN: -1 }, { resolutionN: Number.NaN }])("refuses %j", (options) => {
    expect(() => new CycleDetector(options, () => {})).toThrow(RangeError);
  });
});
