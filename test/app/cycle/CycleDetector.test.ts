import { describe, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { CycleDetector } from "../../../app/cycle/CycleDetector.ts";
import { clamping, feed, feedInto, type Line, level, ramp } from "./feed.ts";

const near = (found: number | undefined, wanted: number, within: number) =>
  expect(Math.abs((found ?? Number.NaN) - wanted)).toBeLessThanOrEqual(within);

/** No figure that leaves the room is NaN or infinite. */
function expectFinite(cycle: Cycle): void {
  JSON.stringify(cycle, (_, value) => {
    if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
    return value;
  });
}

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

describe("overload", () => {
  it("in the middle of a hold is a state: the cycle goes on and is marked", () => {
    const lines: Line[] = clamping(15_000, 6);
    for (let i = 600; i < 640; i += 1) lines[i] = "overload";
    const { cycles } = feed(lines);
    expect(cycles).toHaveLength(1);
    expect(cycles[0]!.flags).toContain("overload");
    near(cycles[0]!.settledN, 15_000, 3);
  });

  it("all through the hold leaves no settled force, and the peak is what was still shown", () => {
    const lines: Line[] = [...level(0, 200), 4_000, ...Array(300).fill("overload"), 3_000, ...level(0, 200)];
    const { cycles } = feed(lines);
    expect(cycles).toHaveLength(1);
    expect(cycles[0]!.settledN).toBeUndefined();
    near(cycles[0]!.peakN, 4_000, 10);
    expectFinite(cycles[0]!);
  });

  it("is what readings that stay at the stated capacity are", () => {
    const lines = clamping(40_000).map((v) => Math.min(v, 30_000));
    const [cycle] = feed(lines, { rateHz: 100, capacityN: 30_000 }).cycles;
    expect(cycle!.flags).toContain("overload");
    expect(cycle!.settledN).toBeUndefined();
  });
});

describe("a gauge that holds its maximum", () => {
  const held = (forceN: number, n: number): Line[] =>
    Array.from({ length: n }, () => ({ forceN, state: "held" as const }));

  it("gives peaks and no settled force", () => {
    const { cycles } = feed(
      [...held(0, 50), ...held(21_400, 80), ...held(0, 50), ...held(21_200, 80), ...held(0, 50)],
      { rateHz: 10 },
    );
    expect(cycles.map((c) => [c.peakN, c.settledN, c.flags])).toEqual([
      [21_400, undefined, ["peakHold"]],
      [21_200, undefined, ["peakHold"]],
    ]);
  });

  it("is not one that sends its maximum between live readings", () => {
    const lines = clamping(15_000).flatMap((v): Line[] => [v, { forceN: 16_000, state: "held" }]);
    const { cycles } = feed(lines, { rateHz: 200 });
    expect(cycles).toHaveLength(1);
    near(cycles[0]!.settledN, 15_000, 3);
    expect(cycles[0]!.flags).not.toContain("peakHold");
  });
});

describe("time", () => {
  it("is absent, not guessed, when neither rate nor stamps are known; the force is there all the same", () => {
    const [cycle] = feed(clamping(15_000), {}).cycles;
    expect([cycle!.startS, cycle!.endS, cycle!.riseTimeS, cycle!.slopeNPerS, cycle!.creep]).toEqual(
      Array(5).fill(undefined),
    );
    near(cycle!.settledN, 15_000, 3);
    near(cycle!.startIndex, 200, 2);
  });

  it("comes from the gauge's own stamps, which may repeat and run backwards", () => {
    const stamped = clamping(15_000).map(
      (forceN, i): Line => ({ forceN, stampS: 500 + Math.floor(i / 2) * 0.02 - (i === 300 ? 0.1 : 0) }),
    );
    const { cycles } = feed(stamped, {});
    expect(cycles).toHaveLength(1);
    near(cycles[0]!.startS, 2, 0.03);
    near(cycles[0]!.endS, 6.07, 0.03);
  });

  it("goes on through a counter that begins again in the hold", () => {
    const stamped = clamping(15_000).map(
      (forceN, i): Line => ({ forceN, stampS: ((65_300 + 10 * i) % 65_536) / 1000 }),
    );
    const { cycles } = feed(stamped, {});
    expect(cycles).toHaveLength(1);
    near(cycles[0]!.endS! - cycles[0]!.startS!, 4.07, 0.05);
  });

  it("is a gap where the stamps leap: the hold is cut", () => {
    const lines = clamping(15_000, 8);
    const stamped = lines.map((forceN, i): Line => ({ forceN, stampS: i / 100 + (i > 600 ? 30 : 0) }));
    const { cycles } = feed(stamped, {});
    expect(cycles.map((c) => c.flags.includes("cut"))).toEqual([true]);
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

describe("zero on the user's word", () => {
  it("is taken from a steady second of rest and stands for the cycles after it", () => {
    const found: Cycle[] = [];
    const detector = new CycleDetector({ rateHz: 100 }, (cycle) => found.push(cycle));
    feedInto(detector, level(120, 150));
    const outcome = detector.takeZero();
    expect(outcome.kind).toBe("taken");
    if (outcome.kind === "taken") near(outcome.zeroN, 120, 3);
    feedInto(detector, clamping(15_000, 4, 120));
    detector.end();
    expect(found[0]!.restBefore!.reset).toBe(true);
  });

  it.each<[string, Line[]]>([
    ["noReadings", level(0, 20)],
    ["moving", [...level(0, 200), ...ramp(0, 400, 60)]],
    ["moving", [...level(0, 200), 300, 280, ...level(0, 30)]],
    ["loaded", clamping(15_000).slice(0, 500)],
    ["overload", [...level(0, 200), "overload"]],
    ["held", [...level(0, 200), ...Array.from({ length: 40 }, () => ({ forceN: 0, state: "held" as const }))]],
  ])("is refused with the reason %s", (reason, lines) => {
    const detector = new CycleDetector({ rateHz: 100 }, () => {});
    feedInto(detector, lines);
    expect(detector.takeZero()).toEqual({ kind: "refused", reason });
  });

  it("is refused at a rest that a release left strained", () => {
    const detector = new CycleDetector({ rateHz: 100 }, () => {});
    feedInto(detector, [...clamping(15_000).slice(0, 604), ...ramp(15_000, 900, 4), ...level(900, 200)]);
    expect(detector.takeZero()).toEqual({ kind: "refused", reason: "loaded" });
  });
});

describe("options", () => {
  it.each([{ rateHz: 0 }, { capacityN: -1 }, { resolutionN: Number.NaN }])("refuses %j", (options) => {
    expect(() => new CycleDetector(options, () => {})).toThrow(RangeError);
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
