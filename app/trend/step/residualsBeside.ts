import { mean } from "../../numerics/mean.ts";

/**
 * What a step leaves of the values: each less the mean of its side, and less a slope both sides share.
 * @param at  first value after the step, 1 to n - 1
 * @param sloped  whether a slope is taken out
 */
export function residualsBeside(x: Float64Array, y: Float64Array, at: number, sloped: boolean): Float64Array {
  const rest = centred(y, at);
  if (!sloped) return rest;
  const dx = centred(x, at);
  let sxx = 0;
  let sxy = 0;
  for (let i = 0; i < dx.length; i += 1) {
    sxx += dx[i]! * dx[i]!;
    sxy += dx[i]! * rest[i]!;
  }
  if (sxx > 0) for (let i = 0; i < dx.length; i += 1) rest[i]! -= (sxy / sxx) * dx[i]!;
  return rest;
}

function centred(values: Float64Array, at: number): Float64Array {
  const before = mean(values.subarray(0, at));
  const after = mean(values.subarray(at));
  return values.map((v, i) => v - (i < at ? before : after));
}
