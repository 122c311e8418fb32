import { type ForceUnit, forceUnits } from "../../app/quantity/forceUnits.ts";
import { type LineFormatName, lineFormatNames } from "./lineFormats.ts";

/** What a simulated gauge is like. */
export type GaugeOptions = {
  /** The same seed and the same commands at the same readings give the same bytes. */
  readonly seed: number;
  readonly rateHz: number;
  readonly format: LineFormatName;
  readonly unit: ForceUnit;
  readonly capacityN: number;
  /** What the spindle holds with. */
  readonly forceN: number;
  readonly decimals?: number | undefined;
  /** Standard deviation of the noise; half of it wanders. Default a five-thousandth of the capacity. */
  readonly noiseN?: number | undefined;
  readonly zeroN?: number | undefined;
  readonly driftNPerHour?: number | undefined;
  /** Factor between force and indication; a gauge that has gone off reads other than 1. */
  readonly gain?: number | undefined;
  readonly ringHz?: number | undefined;
  readonly overshoot?: number | undefined;
};

/** A 30 kN gauge on a spindle that holds with 18 kN: what one meets first. */
export const usualGauge: GaugeOptions = {
  seed: 1,
  rateHz: 100,
  format: "numberUnit",
  unit: "kN",
  capacityN: 30_000,
  forceN: 18_000,
};

/** @throws RangeError  with the option's name and what it may be */
export function checkGaugeOptions(options: GaugeOptions): void {
  const { rateHz, capacityN, forceN, format, unit } = options;
  if (!(rateHz > 0 && rateHz <= 100_000))
    throw new RangeError(`rate must be above 0 and at most 100000 a second, got ${rateHz}`);
  if (!(capacityN > 0 && capacityN <= 1e7))
    throw new RangeError(`capacity must be above 0 and at most 10 MN, got ${capacityN} N`);
  if (!(forceN > 0 && forceN <= capacityN))
    throw new RangeError(`force must be above 0 and at most the capacity, got ${forceN} N`);
  if (!lineFormatNames.includes(format))
    throw new RangeError(`format must be one of ${lineFormatNames.join(", ")}, got ${format}`);
  if (!forceUnits.includes(unit)) throw new RangeError(`unit must be one of ${forceUnits.join(", ")}, got ${unit}`);
}
