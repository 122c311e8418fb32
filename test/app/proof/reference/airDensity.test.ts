import { describe, expect, it } from "vitest";
import { airDensity, airDensityShort } from "../../../../app/proof/reference/airDensity.ts";
import { airDensityUncertainty } from "../../../../app/proof/reference/airDensityUncertainty.ts";
import published from "../../../published/air-density-buoyancy.json" with { type: "json" };

const state = (row: { t_degC?: number; p_hPa?: number; rh_percent?: number }) => ({
  temperatureC: row.t_degC!,
  pressurePa: row.p_hPa! * 100,
  humidity: row.rh_percent! / 100,
});
const printed = published.published_check_values.filter((row) => row.cipm2007_kg_m3 !== undefined);

describe("airDensity", () => {
  // Documentation of an open mass-metrology package; formula of Metrologia 45 (2008) 149.
  it.each(printed)("meets the printed $cipm2007_kg_m3 kg/m3", (row) => {
    const half = row.cipm2007_kg_m3 === 0.8815079 ? 5e-8 : 5e-7;
    expect(Math.abs(airDensity(state(row)) - row.cipm2007_kg_m3!)).toBeLessThan(half);
  });

  it.each(published.recomputed_table)("meets the recomputed $cipm2007 kg/m3, and the short form its own", (row) => {
    expect(Math.abs(airDensity(state(row)) / row.cipm2007 - 1)).toBeLessThan(1e-8);
    expect(Math.abs(airDensityShort(state(row)) / row.oiml_r111_e3 - 1)).toBeLessThan(1e-8);
    expect(Math.abs(airDensityShort(state(row)) / airDensity(state(row)) - 1)).toBeLessThanOrEqual(2e-4);
  });

  it.each([
    [{ temperatureC: 200, pressurePa: 1e5, humidity: 0.5 }, /temperature/],
    [{ temperatureC: 20, pressurePa: 1013, humidity: 0.5 }, /pressure.*1.013 kPa/],
    [{ temperatureC: 20, pressurePa: 1e5, humidity: 50 }, /humidity.*5000 %/],
    [{ temperatureC: 20, pressurePa: 1e5, humidity: Number.NaN }, /humidity/],
  ])("refuses %j", (air, words) => {
    expect(() => airDensity(air)).toThrow(words);
    expect(() => airDensityShort(air)).toThrow(words);
  });
});

describe("airDensityUncertainty", () => {
  const air = { temperatureC: 20, pressurePa: 101325, humidity: 0.5 };
  const none = { temperatureC: 0, pressurePa: 0, humidity: 0 };

  it("is the formula's own 2.2e-5 with perfect instruments", () => {
    expect(airDensityUncertainty(air, none) / airDensity(air)).toBeCloseTo(2.2e-5, 10);
  });

  // Metrologia 45 (2008) 149, table of sensitivities (from memory): 1e-5 per Pa, -4e-3 per K, -9e-3 per unit of humidity.
  it.each([
    ["pressurePa", 1e-5, 100],
    ["temperatureC", 4e-3, 1],
    ["humidity", 9e-3, 0.1],
  ] as const)("grows with the uncertainty of %s", (key, sensitivity, u) => {
    const relative = airDensityUncertainty(air, { ...none, [key]: u }) / airDensity(air);
    expect(Math.abs(relative / (sensitivity * u) - 1)).toBeLessThan(0.1);
  });

  it("refuses a negative uncertainty", () => {
    expect(() => airDensityUncertainty(air, { ...none, humidity: -1 })).toThrow(RangeError);
  });
});
