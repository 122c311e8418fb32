import { describe, expect, it } from "vitest";
import { clockJumps } from "../../../../app/round/clock/clockJumps.ts";
import { clockOf, correctedMs } from "../../../../app/round/clock/clockOf.ts";

const DAY = 86_400_000;
const pc = Date.parse("2026-03-02T15:00:00.000Z");

describe("a gauge's clock", () => {
  it("is corrected by its offset alone when it was seen once, a year off or not", () => {
    const clock = clockOf({ gaugeMs: pc - 365 * DAY, pcMs: pc });
    expect(clock).toMatchObject({ offsetMs: -365 * DAY, driftPpm: undefined, setSince: false });
    expect(correctedMs(clock, pc - 365 * DAY - 3_600_000)).toBe(pc - 3_600_000);
  });

  it("shows its drift from two dockings: 86.4 s gained in 20 days are 50 ppm", () => {
    const clock = clockOf({ gaugeMs: pc + 86_400, pcMs: pc }, { gaugeMs: pc - 20 * DAY, pcMs: pc - 20 * DAY });
    expect(clock.driftPpm).toBeCloseTo(50, 9);
    // Ten days back it was ahead by half of that.
    expect(correctedMs(clock, pc - 10 * DAY + 43_200)).toBeCloseTo(pc - 10 * DAY, -1);
  });

  it("has no drift told from two dockings within a day: a second of reading is more than a quartz drifts", () => {
    const MINUTE = 60_000;
    const near = clockOf({ gaugeMs: pc - 1_000, pcMs: pc }, { gaugeMs: pc - 5 * MINUTE, pcMs: pc - 5 * MINUTE });
    expect(near).toMatchObject({ driftPpm: undefined, setSince: false, offsetMs: -1_000 });
    const far = clockOf({ gaugeMs: pc - 2_000, pcMs: pc }, { gaugeMs: pc - DAY, pcMs: pc - DAY });
    expect(far.driftPpm).toBeCloseTo(-2_000 / 86.4, 9);
    // Put an hour on within that day, it is still said to have been set.
    const set = clockOf({ gaugeMs: pc + 60 * MINUTE, pcMs: pc }, { gaugeMs: pc - MINUTE, pcMs: pc - MINUTE });
    expect(set.setSince).toBe(true);
  });

  it("is said to have been set when it moved farther than a clock drifts", () => {
    const clock = clockOf({ gaugeMs: pc, pcMs: pc }, { gaugeMs: pc - 20 * DAY + 3_600_000, pcMs: pc - 20 * DAY });
    expect(clock).toMatchObject({ setSince: true, driftPpm: undefined, offsetMs: 0 });
  });
});

describe("the stamps of a memory", () => {
  const stamps = [0, 1, 2, 3, 4, 5].map((m) => pc + m * 300_000);

  it("tell which end is the older", () => {
    expect(clockJumps(stamps).order).toEqual([0, 1, 2, 3, 4, 5]);
    expect(clockJumps([...stamps].reverse()).order).toEqual([5, 4, 3, 2, 1, 0]);
  });

  it("show where the clock was put back", () => {
    const reset = stamps.map((s, i) => (i < 3 ? s : s - 40 * DAY));
    expect(clockJumps(reset).jumps).toEqual([{ at: 3, backMs: 40 * DAY - 300_000 }]);
    expect(clockJumps([...reset].reverse()).jumps).toEqual([{ at: 2, backMs: 40 * DAY - 300_000 }]);
  });

  it("are not called put back by rounding to minutes, or where a record has none", () => {
    expect(clockJumps([pc, pc + 60_000, pc, undefined, pc + 60_000]).jumps).toEqual([]);
  });
});
