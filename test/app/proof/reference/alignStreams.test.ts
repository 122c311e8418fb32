import { describe, expect, it } from "vitest";
import { alignStreams } from "../../../../app/proof/reference/alignStreams.ts";
import { takeSteps } from "../../../../app/proof/reference/takeSteps.ts";
import { proofStreams } from "../../../support/proofStreams.ts";
import { streamTrial } from "../../../support/streamTrial.ts";

const steady = (limit: number) => ({ windowS: 2, maxDrift: limit, maxScatter: limit });
const stream = (tS: number[], value: number[]) => ({ tS, value });
const seconds = Array.from({ length: 300 }, (_, i) => i / 10);

// Truth: the generator of the two streams (50 and 10 readings a second, stamps up to 50 ms late, clocks up to 2 s apart).
describe("two instruments on one load", () => {
  const trials = Array.from({ length: 40 }, (_, i) => streamTrial(i + 1));

  it("finds the offset of their clocks within 50 ms", () => {
    for (const trial of trials) expect(Math.abs(trial.offsetErrorS ?? Infinity)).toBeLessThan(0.05);
  });

  it("takes each load once, at rest, within 0.01 % of the truth", () => {
    for (const trial of trials) {
      expect(trial.complete).toBe(true);
      expect(trial.worstStep).toBeLessThan(1e-4);
      expect(trial.worstSpeedNPerS).toBeLessThan(5); // ramps run at 700 N/s and more
    }
  });

  it("takes the same values when the offset is off by as much as it may be", () => {
    const s = proofStreams(3);
    const taken = [-0.03, 0, 0.03].map((slip) => {
      const rule = { reference: steady(1.5), gauge: steady(2), offsetS: s.offsetS + slip, offsetHalfWidthS: 0.03 };
      return takeSteps(s.reference, s.gauge, rule).filter((step) => step.reference > 500);
    });
    for (const steps of taken) {
      expect(steps).toHaveLength(s.steps);
      for (const [i, step] of steps.entries())
        expect(Math.abs(step.indication / taken[1]![i]!.indication - 1)).toBeLessThan(2e-5);
    }
  });

  it("finds the same offset whichever of the two keeps its clock", () => {
    const s = proofStreams(7);
    const one = alignStreams(s.reference, s.gauge, 5);
    const two = alignStreams(s.gauge, s.reference, 5);
    if (one.kind !== "aligned" || two.kind !== "aligned") throw new Error("not aligned");
    expect(one.offsetS + two.offsetS).toBeCloseTo(0, 2);
  });
});

describe("alignStreams", () => {
  const rise = seconds.map((t) => (t < 10 ? 0 : t < 12 ? (t - 10) * 50 : 100));

  it("does not mind another unit or a constant between the two", () => {
    const other = stream(
      seconds.map((t) => t - 1.23),
      rise.map((v) => 0.2248 * v - 7),
    );
    const found = alignStreams(stream(seconds, rise), other, 5);
    expect(found).toMatchObject({ kind: "aligned", offsetS: expect.closeTo(1.23, 6) });
  });

  it.each([
    ["too few readings", stream([0, 1], [0, 1]), stream(seconds, rise), "tooShort"],
    [
      "a stream in which nothing moves",
      stream(
        seconds,
        seconds.map(() => 5),
      ),
      stream(seconds, rise),
      "noSteps",
    ],
    [
      "loads that fall where the other's rise",
      stream(seconds, rise),
      stream(
        seconds,
        rise.map((v) => -v),
      ),
      "noMatch",
    ],
    [
      "equal pulses evenly repeated, shifted by a whole one",
      stream(
        seconds,
        seconds.map((t) => (Math.floor(t / 2) % 2) * 10),
      ),
      stream(
        seconds.slice(0, 130),
        seconds.slice(0, 130).map((t) => (Math.floor(t / 2) % 2) * 10),
      ),
      "ambiguous",
    ],
  ])("says what is unclear about %s", (_, base, other, reason) => {
    expect(alignStreams(base, other, 9)).toEqual({ kind: "unclear", reason });
  });

  it("refuses a range of offsets of zero and times without values", () => {
    expect(() => alignStreams(stream(seconds, rise), stream(seconds, rise), 0)).toThrow(RangeError);
    expect(() => alignStreams(stream(seconds, rise), stream(seconds, []), 5)).toThrow(RangeError);
  });
});
