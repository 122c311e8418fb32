import { mean } from "../../numerics/mean.ts";
import { studentQuantile } from "../../numerics/studentQuantile.ts";

/**
 * How great a step is, its place taken as known: the difference of the two means, or, where the values also slope
 * (|t| of the slope beside the step above its 5 % value), the step of a line with one. Least squares, 95 %.
 * @param x  ascending
 * @param at  first value after the step, 1 to n - 1
 * @returns  after less before
 */
export function sizeStep(
  x: Float64Array,
  y: Float64Array,
  at: number,
): { size: number; low: number | undefined; high: number | undefined } {
  const n = x.length;
  const before = part(x, y, 0, at);
  const after = part(x, y, at, n);
  const sxx = before.sxx + after.sxx;
  const syy = before.syy + after.syy;
  const slope = sxx > 0 ? (before.sxy + after.sxy) / sxx : 0;
  const sloped = Math.max(0, syy - slope * slope * sxx);
  const slopes = n > 3 && sxx > 0 && Math.abs(slope) > t95(n - 3) * Math.sqrt(sloped / (n - 3) / sxx);
  const apart = after.meanX - before.meanX;
  const size = after.meanY - before.meanY - (slopes ? slope * apart : 0);
  const freedom = slopes ? n - 3 : n - 2;
  if (freedom < 1) return { size, low: undefined, high: undefined };
  const unit = 1 / at + 1 / (n - at) + (slopes ? (apart * apart) / sxx : 0);
  const half = t95(freedom) * Math.sqrt(((slopes ? sloped : syy) / freedom) * unit);
  return { size, low: size - half, high: size + half };
}

const t95 = (degreesOfFreedom: number) => studentQuantile(0.975, degreesOfFreedom);

function part(x: Float64Array, y: Float64Array, from: number, to: number) {
  const meanX = mean(x.subarray(from, to));
  const meanY = mean(y.subarray(from, to));
  let sxx = 0;
  let sxy = 0;
  let syy = 0;
  for (let i = from; i < to; i += 1) {
    const dx = x[i]! - meanX;
    const dy = y[i]! - meanY;
    sxx += dx * dx;
    sxy += dx * dy;
    syy += dy * dy;
  }
  return { meanX, meanY, sxx, sxy, syy };
}
