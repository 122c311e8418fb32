/** Mean range of two normal values over their standard deviation, as the printed tables round it. */
export const D2_OF_TWO = 1.128;

/** Mean distance of neighbouring values; undefined with fewer than two. */
export function meanMovingRange(values: ArrayLike<number>): number | undefined {
  if (values.length < 2) return undefined;
  let sum = 0;
  for (let i = 1; i < values.length; i += 1) sum += Math.abs(values[i]! - values[i - 1]!);
  return sum / (values.length - 1);
}

/**
 * Standard deviation from neighbour to neighbour: a slow drift or a few steps hardly enter it, which is why control
 * limits are drawn from it. The mean moving range over 1.128.
 * @returns  undefined with fewer than two values
 * @see NIST/SEMATECH e-Handbook 6.3.2.2; ASTM MNL 7 (2002), table of factors
 */
export function movingRangeSigma(values: ArrayLike<number>): number | undefined {
  const range = meanMovingRange(values);
  return range === undefined ? undefined : range / D2_OF_TWO;
}
