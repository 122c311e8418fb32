import { describe, expect, it } from "vitest";
import { normalGravity } from "../../../../app/proof/reference/normalGravity.ts";
import { siteGravity } from "../../../../app/proof/reference/siteGravity.ts";
import published from "../../../published/local-gravity.json" with { type: "json" };

describe("normalGravity", () => {
  // NGA.STND.0036 (WGS 84), gravity on the equator and at the pole, as printed.
  it.each([0, 90] as const)("meets WGS 84 as printed at %s degrees", (latitude) => {
    const printed = published.published_check_values.WGS84[latitude];
    expect(Math.abs(normalGravity(latitude, 0) - printed)).toBeLessThan(1e-9);
  });

  it.each(published.recomputed_table)(
    "meets the recomputed table at $latitude_deg degrees",
    ({ latitude_deg, WGS84, GRS80 }) => {
      expect(Math.abs(normalGravity(latitude_deg, 0) - WGS84)).toBeLessThan(1e-9);
      expect(normalGravity(-latitude_deg, 0)).toBe(normalGravity(latitude_deg, 0));
      // The other reference system differs by 1.5e-6 m/s2 everywhere: a slip in one constant would show.
      expect(Math.abs(normalGravity(latitude_deg, 0) - GRS80)).toBeLessThan(1.6e-6);
    },
  );

  it.each(published.height_table_WGS84_45deg)(
    "falls with height as WGS 84 says, at $h_m m",
    ({ h_m, second_order }) => {
      expect(Math.abs(normalGravity(45, h_m) - second_order)).toBeLessThan(1e-9);
    },
  );

  it.each([
    [91, 0, /latitude.*91/],
    [Number.NaN, 0, /latitude/],
    [45, 20_000, /height.*20000/],
  ])("refuses latitude %s with height %s", (latitude, height, words) => {
    expect(() => normalGravity(latitude, height)).toThrow(words);
  });
});

describe("siteGravity", () => {
  it("states 5e-5 at sea level (common practice, no source)", () => {
    const g = siteGravity(48, 0);
    expect(g.standard / g.value).toBeCloseTo(5e-5, 12);
  });

  // ASTM E74-18 5.3.2 (from memory) takes the rock under the site as solid; the interval must reach it.
  it.each(published.height_table_WGS84_45deg)("covers the formula that counts the rock, at $h_m m", (row) => {
    const g = siteGravity(45, row.h_m);
    expect(Math.abs(row.simplified_force_standard - g.value)).toBeLessThan(2 * g.standard);
  });
});
