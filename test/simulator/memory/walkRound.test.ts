import { describe, expect, it } from "vitest";
import { GaugeClock } from "../../../simulator/memory/GaugeClock.ts";
import { GaugeMemory } from "../../../simulator/memory/GaugeMemory.ts";
import { type WalkPlan, walkRound } from "../../../simulator/memory/walkRound.ts";

const HOUR = 3_600_000;
const fromMs = Date.UTC(2026, 5, 10, 8);
const plan: WalkPlan = Object.freeze({
  seed: 7,
  unit: "kN",
  fromMs,
  toMs: fromMs + HOUR,
  forcesN: Object.freeze([12_000, 18_000, 16_000, 15_000, 14_500, 25_000, 24_000]),
});

function walked(over: Partial<WalkPlan> = {}) {
  const memory = new GaugeMemory(200);
  const count = walkRound(memory, new GaugeClock(120, 0, fromMs), { ...plan, ...over });
  return { readings: memory.readings, count };
}

describe("a walk played into a memory", () => {
  it("stores three takes a stop, one stop left out, with one empty take and one stored twice besides", () => {
    const { readings, count } = walked();
    expect(count).toBe(readings.length);
    expect(readings).toHaveLength(3 * 6 + 2);
    expect(new Set(readings.map((r) => r.location))).toEqual(new Set([1, 2, 4, 5, 6, 7]));
    expect(readings.filter((r) => r.forceN < 100)).toHaveLength(1);
    const twice = readings.filter((r, i) => i > 0 && r.forceN === readings[i - 1]!.forceN);
    expect(twice).toHaveLength(1);
  });

  it("gives the two neighbours farthest apart each other's location number, and no other stop a wrong one", () => {
    const { readings } = walked();
    for (const { forceN, location } of readings.filter((r) => r.forceN > 100)) {
      const stop = location! - 1;
      const owner = stop === 4 ? 5 : stop === 5 ? 4 : stop;
      expect(Math.abs(forceN / plan.forcesN[owner]! - 1)).toBeLessThan(0.03);
    }
  });

  it("stamps by the gauge's own wrong clock, in rising order, inside the walk", () => {
    const { readings } = walked();
    const stamps = readings.map((r) => r.clockMs - 120_000);
    expect(stamps).toEqual([...stamps].sort((a, b) => a - b));
    expect(stamps[0]!).toBeGreaterThanOrEqual(fromMs - 60_000);
    expect(stamps.at(-1)!).toBeLessThan(fromMs + HOUR);
  });

  it("begins with an empty memory, and the same seed walks the same way", () => {
    const memory = new GaugeMemory(200);
    const clock = new GaugeClock(120, 0, fromMs);
    walkRound(memory, clock, plan);
    walkRound(memory, clock, plan);
    expect(memory.readings).toEqual(walked().readings);
  });

  it.each([
    ["too few stops", { forcesN: [12_000, 13_000] }],
    ["a force of nothing", { forcesN: [12_000, 0, 13_000, 14_000, 15_000] }],
    ["no time", { toMs: fromMs }],
  ])("refuses %s", (_, over) => {
    expect(() => walked(over)).toThrow(RangeError);
  });
});
