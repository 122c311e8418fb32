import { describe, expect, it } from "vitest";
import { StampClock } from "../../../../app/cycle/phase/StampClock.ts";

/** Times and gaps a sequence of stamps comes to. */
function times(stamps: readonly number[]): { times: number[]; gaps: number[] } {
  const clock = new StampClock();
  const gaps: number[] = [];
  const found = stamps.map((s, i) => {
    if (clock.take(s)) gaps.push(i);
    return Number(clock.lastS.toFixed(6));
  });
  return { times: found, gaps };
}

describe("a gauge's stamps", () => {
  it("count from the first", () => {
    expect(times([86.4, 86.41, 86.42])).toEqual({ times: [0, 0.01, 0.02], gaps: [] });
  });

  it("are held at the latest when they repeat or jitter back", () => {
    expect(times([1, 1.1, 1.1, 1.08, 1.2])).toEqual({ times: [0, 0.1, 0.1, 0.1, 0.2], gaps: [] });
  });

  it("go on when the counter begins again", () => {
    expect(times([65.5, 65.51, 65.52, 0.004, 0.014])).toEqual({ times: [0, 0.01, 0.02, 0.03, 0.04], gaps: [] });
  });

  it("are a gap when they leap ahead and stay there", () => {
    expect(times([1, 1.01, 1.02, 31.02, 31.03])).toEqual({ times: [0, 0.01, 0.02, 0.03, 30.03], gaps: [4] });
  });

  it("bridge one damaged stamp, whichever way it is off", () => {
    expect(times([1, 1.01, 91.02, 1.03]).gaps).toEqual([]);
    expect(times([1, 1.01, 91.02, 1.03]).times[3]).toBe(0.03);
    expect(times([1, 1.01, 0.02, 1.03]).times).toEqual([0, 0.01, 0.02, 0.03]);
  });

  it("tell the rate, places without a stamp counted, lost time not", () => {
    const clock = new StampClock();
    for (let i = 0; i < 100; i += 1) {
      if (i % 10 === 5) clock.miss();
      else clock.take(i / 50 + (i > 60 ? 20 : 0));
    }
    expect(clock.rateHz).toBeCloseTo(50, 0);
  });

  it("are any after a lost link, later or begun again", () => {
    const clock = new StampClock();
    for (const s of [5, 5.1, 5.2]) clock.take(s);
    clock.break();
    expect(clock.take(60)).toBe(false);
    expect(clock.lastS).toBeCloseTo(55, 9);
    clock.break();
    clock.take(0);
    expect(clock.lastS).toBeCloseTo(55.1, 1);
  });
});
