import { describe, expect, it } from "vitest";
import { type AdapterFactor, type AdapterPair, adapterFactor } from "../../../../app/proof/after/adapterFactor.ts";
import { isRefused } from "../../../../app/proof/method/ProofOptions.ts";
import { normalFrom, seededUniform } from "../../../support/proofStreams.ts";

/** Loads of 5 to 25 kN; `scales` are what each run's seating makes of the adapter. */
const pairs = (scales: readonly number[]): AdapterPair[] =>
  scales.flatMap((scale, i) =>
    [5, 10, 15, 20, 25].map((force) => ({
      run: String(i + 1),
      without: { reference: force, net: force * 1.002 },
      withIt: { reference: force * 1.01, net: (force * 1.01 * 1.002) / scale },
    })),
  );
function made(value: ReturnType<typeof adapterFactor>): AdapterFactor {
  if (isRefused(value)) throw new Error(value.refused);
  return value;
}

describe("adapterFactor", () => {
  it("is the ratio of the two ratios, whatever the gauge's own error and the loads", () => {
    const got = made(adapterFactor(pairs([1.01, 1.02, 1.03])));
    expect(got.scale).toBeCloseTo(1.02, 12);
    expect(got.byRun.map((r) => r.scale)).toEqual([1.01, 1.02, 1.03].map((s) => expect.closeTo(s, 12)));
    // Mean of three with s = 0.01: 0.01/sqrt(3) x t(0.975; 2) = 4.3027, JCGM 100 table G.2.
    expect(got.expanded).toBeCloseTo((0.01 / Math.sqrt(3)) * 4.3027, 6);
  });

  it("multiplies with the known adapter's scale and takes on its uncertainty", () => {
    const got = made(adapterFactor(pairs([1, 1]), { scale: 0.98, relative: 1e-3 }, 2e-4));
    expect(got.scale).toBeCloseTo(0.98, 12);
    expect(got.relative).toBeCloseTo(Math.hypot(1e-3, 2e-4), 9);
  });

  // Truth: the scale the runs are drawn about.
  it("covers the true scale in 95 % of proofs with three runs", () => {
    const uniform = seededUniform(11);
    const hits = Array.from({ length: 1000 }, () => {
      const seats = [1, 2, 3].map(() => 0.99 + 1e-3 * normalFrom(uniform));
      const got = made(adapterFactor(pairs(seats)));
      return Math.abs(got.scale - 0.99) <= got.expanded;
    }).filter(Boolean).length;
    expect(hits / 1000).toBeGreaterThan(0.93);
    expect(hits / 1000).toBeLessThan(0.97);
  });

  it.each([
    ["a single run", pairs([1]), /at least two runs, got 1/],
    ["no reading", [], /at least two runs, got 0/],
    ["an indication of zero", [{ ...pairs([1])[0]!, without: { reference: 5, net: 0 } }], /above zero/],
  ])("refuses %s", (_, given, words) => {
    const got = adapterFactor(given);
    expect(isRefused(got) && got.refused).toMatch(words);
  });
});
