import { describe, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { CycleDetector } from "../../../app/cycle/CycleDetector.ts";
import { clamping, feed, feedInto, type Line, level, ramp } from "./feed.ts";
import { near } from "./near.ts";

describe("a hold that is not whole", () => {
  it("is cut where the stream ends in it", () => {
    const { cycles } = feed(clamping(15_000).slice(0, 450));
    expect(cycles.map((c) => c.flags.includes("cut"))).toEqual([true]);
    near(cycles[0]!.settledN, 15_000, 3);
    expect(cycles[0]!.zeroAfterN).toBeUndefined();
  });

  it("is cut where the stream begins in it, and takes the zero after it", () => {
    const { cycles } = feed(clamping(15_000, 4, 70).slice(300));
    expect(cycles.map((c) => c.flags.includes("cut"))).toEqual([true]);
    near(cycles[0]!.settledN, 15_000, 4);
    near(cycles[0]!.zeroAfterN, 70, 3);
    expect(cycles[0]!.zeroBeforeN).toBeUndefined();
  });

  it("is cut by a lost link and never completed from both sides", () => {
    const found: Cycle[] = [];
    const detector = new CycleDetector({ rateHz: 100 }, (cycle) => found.push(cycle));
    const lines = clamping(15_000, 8);
    feedInto(detector, lines.slice(0, 500));
    detector.gap();
    expect(found.map((c) => c.flags.includes("cut"))).toEqual([true]);
    feedInto(detector, lines.slice(500));
    feedInto(detector, clamping(14_000));
    detector.end();
    expect(found).toHaveLength(2);
    near(found[1]!.settledN, 14_000, 3);
    expect(found[1]!.flags).not.toContain("cut");
  });

  it("keeps its place in time when lines in it are rejected", () => {
    const lines: Line[] = clamping(15_000);
    for (const at of [250, 300, 301, 302, 420]) lines[at] = "rejected";
    const [cycle] = feed(lines).cycles;
    near(cycle!.endS, 6.07, 0.02);
    near(cycle!.settledN, 15_000, 3);
  });
});

describe("back-to-back clampings", () => {
  it("are told apart although the force does not come back to zero, and the first is marked as not released", () => {
    const lines = [
      ...level(0, 200),
      ...ramp(0, 15_000, 3),
      ...level(15_000, 300),
      ...ramp(15_000, 4_000, 4),
      ...level(4_000, 30),
      ...ramp(4_000, 14_000, 3),
      ...level(14_000, 300),
      ...ramp(14_000, 0, 4),
      ...level(0, 200),
    ];
    const { cycles } = feed(lines);
    expect(cycles.map((c) => c.flags.includes("notReleased"))).toEqual([true, false]);
    near(cycles[0]!.settledN, 15_000, 3);
    near(cycles[1]!.settledN, 14_000, 3);
    expect([cycles[0]!.zeroAfterN, cycles[1]!.zeroBeforeN]).toEqual([undefined, undefined]);
  });

  it("take the lower rest when the first one was strained", () => {
    const lines = [
      ...level(600, 200),
      ...ramp(600, 15_600, 3),
      ...level(15_600, 300),
      ...ramp(15_600, 0, 4),
      ...level(0, 200),
    ];
    const [cycle] = feed(lines).cycles;
    near(cycle!.settledN, 15_600, 5);
    expect(cycle!.zeroBeforeN).toBeUndefined();
    near(cycle!.zeroAfterN, 0, 3);
  });
});

describe("a slip", () => {
  it.each([-0.02, -0.1, 0.03])("of %d of the force in the hold marks it unstable and does not end it", (share) => {
    const after = 15_000 * (1 + share);
    const lines = [
      ...level(0, 200),
      ...ramp(0, 15_000, 3),
      ...level(15_000, 250),
      ...level(after, 250),
      ...ramp(after, 0, 4),
      ...level(0, 200),
    ];
    const { cycles } = feed(lines);
    expect(cycles).toHaveLength(1);
    expect(cycles[0]!.flags).toContain("unstable");
  });

  it("is not seen in a rise of two steps", () => {
    const lines = [
      ...level(0, 200),
      ...ramp(0, 8_000, 4),
      ...level(8_000, 60),
      ...ramp(8_000, 15_000, 4),
      ...level(15_000, 400),
      ...ramp(15_000, 0, 4),
      ...level(0, 200),
    ];
    const { cycles } = feed(lines);
    expect(cycles).toHaveLength(1);
    expect(cycles[0]!.flags).not.toContain("unstable");
    near(cycles[0]!.settledFromS, 3.68, 0.03);
  });
});

describe("a hold that outlasts the memory", () => {
  it("keeps force, peak, spikes and slips of an hour at 100 readings a second, in bounded waveforms", () => {
    const lines = [
      ...level(0, 300),
      ...ramp(0, 15_000, 3),
      ...level(15_000, 360_000),
      ...ramp(15_000, 0, 4),
      ...level(0, 300),
    ];
    lines[100_000] = 50_000;
    for (let i = 250_000; i < lines.length - 304; i += 1) lines[i]! -= 600;
    lines[200_000] = 16_000;
    lines[200_001] = 16_000;
    const { cycles, waveforms } = feed(lines);
    expect(cycles).toHaveLength(1);
    near(cycles[0]!.settledN, 15_000, 3);
    near(cycles[0]!.peakN, 16_000, 60);
    expect(cycles[0]!.flags).toEqual(expect.arrayContaining(["spike", "unstable"]));
    near(cycles[0]!.endS, 3603.07, 0.03);
    expect(waveforms[0]!.values.length).toBeLessThan(2 ** 18);
    expect(waveforms[0]!.skipped).toBeGreaterThan(100_000);
  });
});
