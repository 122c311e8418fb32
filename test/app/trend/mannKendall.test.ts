import { describe, expect, it } from "vitest";
import { mannKendall } from "../../../app/trend/mannKendall.ts";
import published from "../../published/trend-tests.json" with { type: "json" };

const cases = published.cases.filter((c) => "S" in c.expected.recomputed);
const xOf = (c: (typeof cases)[number]) => c.inputs.times ?? c.inputs.values.map((_, i) => i);

describe("mannKendall", () => {
  // River, sediment, precipitation, sodium (EPA 530/R-09-007, example 17-7): sources in trend-tests.json.
  it.each(cases)("meets the recomputed figures of $name", (c) => {
    const got = mannKendall(xOf(c), c.inputs.values);
    const want = c.expected.recomputed;
    expect(got.s).toBe(want.S);
    expect(got.varS / want.VarS!).toBeCloseTo(1, 12);
    expect(got.z / want.z!).toBeCloseTo(1, 12);
    expect(got.pNormal / want.p_two_sided!).toBeCloseTo(1, 11);
    expect(got.tauA! / want.tau_a!).toBeCloseTo(1, 12);
    expect(got.tauB! / want.tau_b!).toBeCloseTo(1, 12);
  });

  it("meets the printed figures of the river and sediment series to half a digit", () => {
    const [river, sediment] = cases.map((c) => ({
      got: mannKendall(xOf(c), c.inputs.values),
      printed: c.expected.published as { z: number; p: number; tau_b?: number },
    }));
    expect(Math.abs(river!.got.z - river!.printed.z)).toBeLessThan(0.00005);
    expect(Math.abs(river!.got.p - river!.printed.p)).toBeLessThan(0.00005);
    expect(Math.abs(river!.got.tauB! - river!.printed.tau_b!)).toBeLessThan(5e-8);
    expect(Math.abs(sediment!.got.z - sediment!.printed.z)).toBeLessThan(0.00005);
    expect(Math.abs(sediment!.got.p - sediment!.printed.p)).toBeLessThan(5e-8);
  });

  it("counts p out up to ten values: S = 25 of ten has 2 x 0.014 (EPA 530/R-09-007, table 17-5, from memory)", () => {
    const sodium = cases.find((c) => c.name.startsWith("sodium"))!;
    const got = mannKendall(xOf(sodium), sodium.inputs.values);
    expect(got.method).toBe("exact");
    expect(Math.abs(got.p - 2 * 0.014)).toBeLessThan(0.001);
    expect(mannKendall([...xOf(sodium), 97], [...sodium.inputs.values, 60]).method).toBe("normal");
  });

  it("says that four values can never reject at 5 % and five can", () => {
    expect(mannKendall([1, 2, 3, 4], [1, 2, 3, 4]).leastP).toBeCloseTo(2 / 24, 12);
    expect(mannKendall([1, 2, 3, 4, 5], [5, 4, 3, 2, 1])).toMatchObject({ s: -10, p: expect.closeTo(2 / 120, 12) });
  });

  it("does not move when time is counted in milliseconds since 1970", () => {
    const { values } = cases[0]!.inputs;
    const inMs = values.map((_, i) => 1.6e12 + i * 86_400_000);
    expect(mannKendall(inMs, values)).toEqual(mannKendall(xOf(cases[0]!), values));
  });

  it("turns with the sign of y", () => {
    const { values } = cases[2]!.inputs;
    const turned = mannKendall(
      xOf(cases[2]!),
      values.map((v) => -v),
    );
    expect(turned).toMatchObject({ s: -cases[2]!.expected.recomputed.S!, p: mannKendall(xOf(cases[2]!), values).p });
  });

  it.each([
    ["one value", [1], [5], undefined],
    ["all equal", [1, 2, 3, 4], [5, 5, 5, 5], undefined],
    ["one date", [3, 3, 3], [1, 2, 3], undefined],
  ])("has no trend in %s", (_, x, y, tauB) => {
    expect(mannKendall(x, y)).toMatchObject({ s: 0, z: 0, p: 1, tauB });
  });
});
