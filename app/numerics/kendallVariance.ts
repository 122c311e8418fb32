import type { KendallCounts } from "./kendallCounts.ts";

/**
 * Variance of Kendall's S when y stands in random order against x, corrected for ties in both.
 * @returns  0 where all x or all y are equal
 * @see M. G. Kendall, Rank Correlation Methods, 4th ed. (1970), eq. 4.4; EPA 530/R-09-007, 17.3.2 (ties in y only)
 */
export function kendallVariance(counts: KendallCounts): number {
  const { n } = counts;
  if (n < 2) return 0;
  const x = tieTerms(counts.tiesX.sizes);
  const y = tieTerms(counts.tiesY.sizes);
  const whole = n * (n - 1) * (2 * n + 5);
  const threes = n > 2 ? (x.triples / n / (n - 1)) * (y.triples / (9 * (n - 2))) : 0;
  const twos = (x.pairs / n) * (y.pairs / (2 * (n - 1)));
  return Math.max(0, (whole - x.weighted - y.weighted) / 18 + threes + twos);
}

function tieTerms(sizes: readonly number[]): { pairs: number; triples: number; weighted: number } {
  const terms = { pairs: 0, triples: 0, weighted: 0 };
  for (const t of sizes) {
    terms.pairs += t * (t - 1);
    terms.triples += t * (t - 1) * (t - 2);
    terms.weighted += t * (t - 1) * (2 * t + 5);
  }
  return terms;
}
