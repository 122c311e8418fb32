/** Most lags looked at; noise that remembers longer than this is drift. */
const maxLag = 400;

/**
 * How many successive readings count as one: 1 for independent readings, (1 + r) / (1 - r) for noise that keeps the
 * share r from one reading to the next. Sums of two neighbouring autocorrelations are added as long as they stay
 * positive and do not grow (initial monotone sequence): past that only chance is left. What taking out the mean hides
 * from the autocorrelations is put back.
 * @param segments  stretches of equally spaced readings of the same noise, each about its own mean or trend
 * @param of  `median`: for the variance of a median of normal noise, whose autocorrelations are those of the signs,
 *            (2 / pi) asin r
 * @returns  1 or more; 1 where nothing can be told (under three readings, no spread)
 * @see C. J. Geyer, Practical Markov chain Monte Carlo, Statistical Science 7 (1992) 473, 3.3; signs of normal
 *      variables: W. F. Sheppard, Philosophical Transactions A 192 (1899) 101
 */
export function correlationTime(segments: readonly Float64Array[], of: "mean" | "median" = "mean"): number {
  let n = 0;
  let longest = 0;
  let squares = 0;
  for (const s of segments) {
    n += s.length;
    longest = Math.max(longest, s.length);
    squares += laggedSum(s, 0);
  }
  if (n < 3 || !(squares > 0)) return 1;
  const hidden = (time: number) => (segments.length * time) / n;
  const correlations: number[] = [];
  const limit = Math.min(maxLag, Math.floor(longest / 3));
  let time = 1;
  let last = Number.POSITIVE_INFINITY;
  for (let lag = 1; lag <= limit; lag += 2) {
    const r1 = sumAt(segments, lag) / squares;
    const r2 = sumAt(segments, lag + 1) / squares;
    // The pair rule starts with lags 0 and 1, whose sum is positive; here the pairs are (1, 2), (3, 4), ...
    const pair = Math.min(last, r1 + r2 + 2 * hidden(time));
    if (!(pair > noiseOfPair(n))) break;
    correlations.push(r1, r2);
    time += 2 * pair;
    last = pair;
  }
  return Math.max(1, total(correlations, hidden(time), of));
}

/** A pair of autocorrelations of independent readings scatters by sqrt(2 / n); under one such spread nothing is claimed. */
const noiseOfPair = (n: number) => Math.sqrt(2 / n);

function total(correlations: readonly number[], hidden: number, of: "mean" | "median"): number {
  let sum = 1;
  for (const r of correlations) {
    const full = Math.min(1, Math.max(-1, r + hidden));
    sum += 2 * (of === "mean" ? full : (2 / Math.PI) * Math.asin(full));
  }
  return sum;
}

function sumAt(segments: readonly Float64Array[], lag: number): number {
  let sum = 0;
  for (const s of segments) sum += laggedSum(s, lag);
  return sum;
}

function laggedSum(values: Float64Array, lag: number): number {
  let sum = 0;
  for (let i = lag; i < values.length; i += 1) sum += values[i]! * values[i - lag]!;
  return sum;
}
