import { type AirState, airDensity } from "./airDensity.ts";

/** Standard uncertainties (k = 1) of the three readings, in their own units. */
export type AirUncertainty = {
  readonly temperatureC: number;
  readonly pressurePa: number;
  readonly humidity: number;
};

/**
 * Standard uncertainty of the air density: the formula's own 2.2e-5 and the three instruments, by differences.
 * @returns  kg/m3, k = 1
 * @throws RangeError  an uncertainty below zero, or as `airDensity`
 * @see Metrologia 45 (2008) 149 for the formula's part; JCGM 100:2008, 5.1.2
 */
export function airDensityUncertainty(air: AirState, u: AirUncertainty): number {
  if (!(u.temperatureC >= 0 && u.pressurePa >= 0 && u.humidity >= 0))
    throw new RangeError("an uncertainty is not below zero");
  const density = airDensity(air);
  // Small enough for the formula to be straight, large enough for the digits to stand; inward at the ends of the range.
  const slope = (key: keyof AirState, step: number, high: number) => {
    const signed = air[key] + step > high ? -step : step;
    return (airDensity({ ...air, [key]: air[key] + signed }) - density) / signed;
  };
  return Math.hypot(
    2.2e-5 * density,
    slope("temperatureC", 0.01, 60) * u.temperatureC,
    slope("pressurePa", 10, 110_000) * u.pressurePa,
    slope("humidity", 0.001, 1) * u.humidity,
  );
}
