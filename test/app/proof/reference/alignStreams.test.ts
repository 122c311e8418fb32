import { describe, expect, it } from "vitest";
import { alignStreams } from "../../../../app/proof/reference/alignStreams.ts";
import { takeSteps } from "../../../../app/proof/reference/takeSteps.ts";
import { proofStreams } from "../../../support/proofStreams.ts";

const seeds = Array.from({ length: 40 }, (_, i) => i + 1);
const steady = (limit: number) => ({ windowS: 2, maxDrift: limit, maxScatter: limit });
const stream = (tS: number[], value: number[]) => ({ tS, value });
const seconds = Array.from({ length: 300 }, (_, i) => i / 10);

// Truth: the generator of the two streams (50 and 10 readings a second, stamps up to 50 ms late, clocks up to 2 s apart).
describe("two instruments on one load", () => {
  it("finds the offset of their clocks within 50 ms", () => {
    for (const seed of seeds) {
      const s = proofStreams(seed);
      const found = alignStreams(s.reference, s.gauge, 5);
      expect(found.kind === "aligned" && Math.abs(found.offsetS - s.offsetS)).toBeLessThan(0.05);
      expect(found.kind === "aligned" && Math.abs(found.offsetS - s.offsetS)).toBeLessThan(
        found.kind === "aligned" ? found.halfWidthS : 0,
      );
    }
  });

  it("takes each load once, at rest, within 0.01 % of the truth, whatever the offset was found to be", () => {
    for (const seed of seeds) {
      const s = proofStreams(seed);
      const loads = [-0.03, 0, 0.03].map((slip) => {
        const rule = { reference: steady(1.5), gauge: steady(2), offsetS: s.offsetS + slip, offsetHalfWidthS: 0.03 };
        return takeSteps(s.reference, s.gauge, rule).filter((step) => step.reference > 500);
      });
      for (const steps of loads) {
        expect(steps).toHaveLength(s.steps);
        for (const step of steps) {
          const times = Array.from({ length: 200 }, (_, i) => step.fromS + ((step.toS - step.fromS) * i) / 199);
          const truth = times.reduce((sum, t) => sum + s.forceAt(t), 0) / 200;
          expect(Math.max(...times.map(s.speedAt))).toBeLessThan(5); // ramps run at 700 N/s and more
          expect(Math.abs(step.reference / truth - 1)).toBeLessThan(1e-4);
          expect(Math.abs(step.indication / truth - 1)).toBeLessThan(1e-4);
        }
      }
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
