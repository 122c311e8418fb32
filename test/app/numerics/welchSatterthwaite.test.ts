import { describe, expect, it } from "vitest";
import { welchSatterthwaite } from "../../../app/numerics/welchSatterthwaite.ts";
import gum from "../../published/gum-annex-examples.json" with { type: "json" };

const caseNamed = (start: string) => gum.cases.find((c) => c.name.startsWith(start))!;

describe("welchSatterthwaite", () => {
  // JCGM 100:2008 (GUM) annex H.1, end gauge
  const endGauge = caseNamed("H.1");
  const parts = Object.values(endGauge.inputs!.components!).map(({ u, nu }) => ({ standard: u, degreesOfFreedom: nu }));

  it("meets the GUM's end gauge: recomputed to 1e-8, published 16.7, used as 16", () => {
    const degrees = welchSatterthwaite(parts);
    expect(degrees / endGauge.expected!.recomputed!.nu_effective!).toBeCloseTo(1, 8);
    expect(Math.abs(degrees - endGauge.expected!.published!.nu_effective!)).toBeLessThan(0.1); // printed cut, not rounded
    expect(Math.floor(degrees)).toBe(endGauge.expected!.published!.nu_used);
  });

  it("meets the GUM's measured difference: recomputed 25.447, published 25.6 from rounded parts", () => {
    const degrees = welchSatterthwaite(parts.slice(1, 4));
    expect(degrees / endGauge.expected!.recomputed!.nu_of_difference!).toBeCloseTo(1, 8);
    const rounded = welchSatterthwaite(
      parts.slice(1, 4).map((p) => ({ ...p, standard: Math.round(p.standard * 10) / 10 })),
    );
    expect(rounded).toBe(degrees); // these parts are stated in tenths already: the printed 25.6 takes 9.7 for their sum
    expect((degrees * 9.7 ** 4) / endGauge.expected!.recomputed!.u_of_difference! ** 4).toBeCloseTo(25.6, 1);
  });

  // JCGM 100:2008 (GUM) G.4.1, example (figures from memory, confirmed by their inputs)
  it("meets the GUM's product of three means: recomputed 18.9987, published 19", () => {
    const example = caseNamed("G.4");
    const { relative_u_percent: u, n } = example.inputs!;
    const degrees = welchSatterthwaite(u!.map((standard, i) => ({ standard, degreesOfFreedom: n![i]! - 1 })));
    expect(degrees / example.expected!.recomputed!.nu_effective!).toBeCloseTo(1, 8);
    expect(Math.abs(degrees - 19)).toBeLessThan(0.5);
  });

  it("does not move with the unit, however small or large", () => {
    const base = welchSatterthwaite(parts);
    for (const scale of [1e-120, 1e120]) {
      expect(welchSatterthwaite(parts.map((p) => ({ ...p, standard: p.standard * scale }))) / base).toBeCloseTo(1, 12);
    }
  });

  it("is without limit when every part is", () => {
    expect(welchSatterthwaite([{ standard: 2, degreesOfFreedom: Infinity }])).toBe(Infinity);
  });

  it.each([
    [-1, 3],
    [NaN, 3],
    [1, 0],
    [1, NaN],
  ])("refuses u = %d with %d degrees of freedom", (standard, degreesOfFreedom) => {
    expect(() => welchSatterthwaite([{ standard, degreesOfFreedom }])).toThrow(RangeError);
  });
});
