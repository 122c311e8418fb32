/**
 * Factors for charts of samples of n normal values: c4 (mean of s over sigma), A3 (limits of means, in mean s), B3
 * and B4 (limits of s, in mean s).
 * @param n  2 and more
 * @throws RangeError  n below two
 * @see ASTM MNL 7 (2002), table of factors
 */
export function sampleFactors(n: number): { c4: number; a3: number; b3: number; b4: number } {
  if (!(n >= 2)) throw new RangeError(`sampleFactors requires samples of two and more, got ${n}`);
  let c4 = Math.sqrt(2 / Math.PI); // of two; from n to n + 1 the product c4(n) c4(n + 1) is sqrt((n - 1)/n)
  for (let size = 2; size < n; size += 1) c4 = Math.sqrt((size - 1) / size) / c4;
  const spread = (3 * Math.sqrt(1 - c4 * c4)) / c4;
  return { c4, a3: 3 / (c4 * Math.sqrt(n)), b3: Math.max(0, 1 - spread), b4: 1 + spread };
}
