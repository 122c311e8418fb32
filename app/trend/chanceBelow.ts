import { studentCdf } from "../numerics/studentCdf.ts";
import type { StretchFit } from "./fitStretch.ts";
import { FORECAST_CHECKS } from "./forecastLimit.ts";

/**
 * Chance that a check at x finds the spindle under a limit: Student's t about the stretch's line, with the scatter of
 * single checks and the uncertainty all checks share in it.
 * @param shared  standard uncertainty that all checks share, in the unit of y
 * @returns  0 to 1; undefined with too few checks for a line, or where they show no scatter
 */
export function chanceBelow(fit: StretchFit, limit: number, x: number, shared = 0): number | undefined {
  const { yardstick, line } = fit;
  if (fit.n < FORECAST_CHECKS || yardstick === undefined || line === undefined) return undefined;
  const off = x - yardstick.meanX;
  const own = yardstick.s * yardstick.s * (1 + 1 / yardstick.n + (off * off) / yardstick.sxx);
  const standard = Math.sqrt(own + shared * shared);
  if (!(standard > 0)) return undefined;
  return studentCdf((limit - line.intercept - line.slope * x) / standard, yardstick.degreesOfFreedom);
}
