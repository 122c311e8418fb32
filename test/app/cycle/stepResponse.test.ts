import { describe, expect, it } from "vitest";
import published from "../../published/step-response-overshoot.json" with { type: "json" };
import { feed, level } from "./feed.ts";

// A snap clamp as the textbooks' second-order step, through the whole detector; formulas and values in the file.
const settledN = 18_000;
const frequency = 2 * Math.PI * 8;

function response(damping: number, t: number): number {
  const root = Math.sqrt(1 - damping ** 2);
  return 1 - (Math.exp(-damping * frequency * t) / root) * Math.sin(frequency * root * t + Math.acos(damping));
}

/** Two seconds of rest, the step, six seconds of hold, a quick release; next to no noise. */
function stream(damping: number, rateHz: number): number[] {
  const hold = Array.from({ length: 6 * rateHz }, (_, i) => settledN * response(damping, i / rateHz));
  const rest = 2 * rateHz;
  return [...level(0, rest, 0.5), ...hold.map((v, i) => v + level(0, 1, 0.5, i)[0]!), ...level(0, rest, 0.5)];
}

describe("the textbook's step response", () => {
  it.each(published.by_damping.filter((row) => row.damping_ratio >= 0.2))(
    "is read with its overshoot of $overshoot_percent % at a damping ratio of $damping_ratio",
    ({ damping_ratio, overshoot_percent }) => {
      const { cycles } = feed(stream(damping_ratio, 1000), { rateHz: 1000 });
      expect(cycles).toHaveLength(1);
      expect(cycles[0]!.flags).toEqual([]);
      expect(Math.abs(cycles[0]!.settledN! - settledN)).toBeLessThan(2);
      expect(Math.abs(100 * cycles[0]!.overshoot! - overshoot_percent)).toBeLessThan(0.1);
    },
  );

  it.each(published.by_damping.filter((row) => row.damping_ratio >= 0.2))(
    "peaks at its textbook time at a damping ratio of $damping_ratio",
    ({ damping_ratio, time_to_peak_times_wn }) => {
      const [cycle] = feed(stream(damping_ratio, 1000), { rateHz: 1000 }).cycles;
      expect(Math.abs(cycle!.peakIndex / 1000 - 2 - time_to_peak_times_wn / frequency)).toBeLessThan(0.003);
    },
  );

  it("is marked coarse under sixteen readings a ring period, where a crest may lose so much as the table says, and not from there on", () => {
    for (const { samples_per_period: n } of published.sampling_loss.filter((row) => row.samples_per_period <= 100)) {
      const root = Math.sqrt(1 - 0.3 ** 2);
      const rateHz = Math.round((n * frequency * root) / (2 * Math.PI));
      const [cycle] = feed(stream(0.3, rateHz), { rateHz }).cycles;
      expect([n, cycle!.flags.includes("coarse")]).toEqual([n, n < 16]);
    }
  });

  it("gives more of the true peak than the greatest sample of the published trace, and never more than there was", () => {
    const { force_kN, expected } = published.sampled_trace;
    const trace = [
      ...level(0, 100, 0.01),
      ...force_kN.slice(1).map((kN) => 1000 * kN),
      ...level(18_000, 200, 0.01),
      ...level(0, 100, 0.01),
    ];
    const [cycle] = feed(trace, { rateHz: 50 }).cycles;
    expect(cycle!.peakN).toBeGreaterThan(1000 * expected.largest_sample_kN);
    expect(cycle!.peakN).toBeLessThan(1000 * expected.true_peak_kN * 1.005);
    expect(Math.abs(cycle!.settledN! - 1000 * expected.settled_kN)).toBeLessThan(1);
    expect(cycle!.flags).toContain("coarse");
  });
});
