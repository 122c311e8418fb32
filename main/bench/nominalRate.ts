/** Rates gauges are built for (common practice, no source). */
const nominal = [
  1, 2, 4, 5, 8, 10, 12.5, 15, 16, 20, 25, 30, 40, 50, 60, 80, 100, 120, 125, 150, 200, 250, 300, 400, 500, 600, 800,
  1_000, 1_200, 2_000,
];
/** Two or three seconds of bursts do not tell the rate better than this. */
const WITHIN = 0.025;

/** The rate a gauge was built for when the measured one lies close to it, else the measured one; undefined for none. */
export function nominalRate(measuredHz: number | undefined): number | undefined {
  if (measuredHz === undefined || !(measuredHz > 0)) return undefined;
  return nominal.find((rate) => Math.abs(measuredHz - rate) <= WITHIN * rate) ?? measuredHz;
}
