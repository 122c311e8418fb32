import { describe, expect, it } from "vitest";
import {
  type ClampingShape,
  dampingOf,
  forceOfClamping,
  peakTimeOf,
  stepResponse,
} from "../../../simulator/physics/clampingShape.ts";
import published from "../../published/step-response-overshoot.json" with { type: "json" };

const shape: ClampingShape = {
  settledN: 18_000,
  drawnShare: 0.15,
  drawS: 0.12,
  overshoot: 0.03,
  ringHz: 12,
  creep: 0.002,
};
const release = { atS: 5, fallS: 0.15, residual: 0 };

describe("stepResponse", () => {
  // Second-order step response as in control-engineering textbooks; source and provenance stand in the file.
  it.each(published.by_damping)("overshoots as published at a damping ratio of $damping_ratio", (row) => {
    const overshoot = row.overshoot_percent / 100;
    expect(dampingOf(overshoot)).toBeCloseTo(row.damping_ratio, 9);
    const ringHz = 10;
    expect(stepResponse(overshoot, ringHz, 1 / (2 * ringHz))).toBeCloseTo(1 + overshoot, 9);
  });

  it("meets the rounded figures of the textbooks to half their last digit", () => {
    for (const [ratio, percent] of Object.entries(published.published_rounded_overshoot_percent)) {
      expect(Math.abs(dampingOf(percent / 100) - Number(ratio))).toBeLessThan(0.0015);
    }
  });

  it("meets the published trace of a clamp sampled at 50 Hz", () => {
    const { natural_frequency_hz, damping_ratio, settled_kN, sample_rate_hz } = published.sampled_trace.inputs;
    const ringHz = natural_frequency_hz * Math.sqrt(1 - damping_ratio ** 2);
    const overshoot = published.by_damping.find((row) => row.damping_ratio === damping_ratio)!.overshoot_percent / 100;
    const ours = published.sampled_trace.force_kN.map(
      (_, i) => settled_kN * stepResponse(overshoot, ringHz, i / sample_rate_hz),
    );
    for (const [i, force] of published.sampled_trace.force_kN.entries()) expect(ours[i]).toBeCloseTo(force, 5);
  });

  it.each([0, 1, -0.1, Number.NaN])("refuses an overshoot of %d", (overshoot) => {
    expect(() => dampingOf(overshoot)).toThrow(RangeError);
  });
});

describe("forceOfClamping", () => {
  const held = (tS: number) => forceOfClamping(shape, undefined, tS);

  it("is nothing before it begins and at its start", () => {
    expect(held(-1)).toBe(0);
    expect(held(0)).toBe(0);
  });

  it("is the settled force two seconds after the snap", () => {
    expect(held(shape.drawS + 2) / shape.settledN).toBeCloseTo(1, 9);
  });

  it("draws in slowly, then snaps and rings once above the settled force", () => {
    expect(held(shape.drawS) / shape.settledN).toBeCloseTo(shape.drawnShare, 9);
    const crest = held(peakTimeOf(shape)) / shape.settledN;
    expect(crest).toBeGreaterThan(1.02);
    expect(crest).toBeLessThan(1.03 + 1e-9);
  });

  it("creeps by its share in each decade of time", () => {
    const snap = shape.drawS;
    expect((held(snap + 20) - held(snap + 2)) / shape.settledN).toBeCloseTo(shape.creep, 6);
  });

  it("falls from what it was to the residual force without a step", () => {
    const with2 = { ...release, residual: 0.02 };
    expect(forceOfClamping(shape, with2, 5)).toBe(held(5));
    expect(forceOfClamping(shape, with2, 5.15)).toBeCloseTo(0.02 * shape.settledN, 6);
    expect(forceOfClamping(shape, with2, 60)).toBeCloseTo(0.02 * shape.settledN, 6);
    let last = held(5);
    for (let i = 1; i <= 100; i += 1) {
      const now = forceOfClamping(shape, with2, 5 + (0.15 * i) / 100);
      expect(now).toBeLessThanOrEqual(last);
      expect(last - now).toBeLessThan(0.02 * shape.settledN);
      last = now;
    }
  });
});
