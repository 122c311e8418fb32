import type { StretchFit } from "./fitStretch.ts";
import { reachOptions } from "./forecastLimit.ts";
import { bandHalf } from "./reachInterval.ts";

/** The robust line at x, and between which values the true course lies there. */
export type BandPoint = {
  readonly x: number;
  readonly mid: number;
  /** Undefined where the checks are too few to say. */
  readonly low: number | undefined;
  readonly high: number | undefined;
};

/** Points over the stretch itself, and as many again past it: the band's edges are hyperbolas, nearly straight. */
const STEPS = 8;

/**
 * Points to draw the line and its band through; where the band crosses a limit is where `forecastLimit` says. The
 * edges are the yardstick's confidence band, stretched where needed to hold the robust line.
 * @param upTo  draws on to this x when it lies past the last check, but no farther than three spans
 * @returns  ascending x; none without a line
 */
export function bandPoints(
  fit: StretchFit,
  options: { readonly confidence: number; readonly shared: number; readonly upTo: number | undefined },
): BandPoint[] {
  const { line, yardstick, firstX, lastX } = fit;
  if (line === undefined) return [];
  const reach = reachOptions(fit, options);
  const at = (x: number): BandPoint => {
    const mid = line.intercept + line.slope * x;
    if (yardstick === undefined || reach === undefined) return { x, mid, low: undefined, high: undefined };
    const middle = yardstick.meanY + yardstick.slope * (x - yardstick.meanX);
    const half = bandHalf(yardstick, x, reach);
    return { x, mid, low: Math.min(mid, middle - half), high: Math.max(mid, middle + half) };
  };
  const span = lastX - firstX;
  const points = Array.from({ length: STEPS + 1 }, (_, i) => at(firstX + (span * i) / STEPS));
  const end = options.upTo === undefined ? lastX : Math.min(lastX + 3 * span, Math.max(lastX, options.upTo));
  if (end > lastX) for (let i = 1; i <= STEPS; i += 1) points.push(at(lastX + ((end - lastX) * i) / STEPS));
  return points;
}
