import { describe, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { CycleDetector } from "../../../app/cycle/CycleDetector.ts";
import { clamping, feed, feedInto, type Line, level, ramp } from "./feed.ts";
import { expectFinite, near } from "./near.ts";

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
