/** Most lags looked at; noise that remembers longer than this is drift. */
const maxLag = 400;

export type CorrelationTime = {
  /** Autocorrelation at lag 1, what the means hide put back; 0 when nothing can be told. */
  readonly lag1: number;
  /** For the variance of a mean. */
  readonly ofMean: number;
  /** For the variance of a median of normal noise, whose autocorrelations are those of the signs, (2 / pi) asin r. */
  readonly ofMedian: number;
};

const independent: CorrelationTime = { lag1: 0, ofMean: 1, ofMedian: 1 };

/**
 * How many successive readings count as one: 1 for independent readings, (1 + r) / (1 - r) for noise that keeps the
 * share r from one reading to the next. Sums of two neighbouring autocorrelations are added as long as they stay
 * positive and do not grow (initial monotone sequence): past that only chance is left. What taking out the mean hides
 * from the autocorrelations is put back.
 * @param segments  stretches of equally spaced readings of the same noise, each about its own mean or trend
 * @returns  1 or more; 1 where nothing can be told (under three readings, no spread)
 * @see C. J. Geyer, Practical Markov chain Monte Carlo, Statistical Science 7 (1992) 473, 3.3; signs of normal
 *      variables: W. F. Sheppard, Philosophical Transactions A 192 (1899) 101
 */
export function correlationTime(segments: readonly Float64Array[]): CorrelationTime {
  let n = 0;
  let longest = 0;
  let squares = 0;
  for (const s of segments) {
    n += s.length;
    longest = Math.max(longest, s.length);
    squares += laggedSum(s, 0);
  }
  if (n < 3 || !(squares > 0)) return independent;
  const hidden = (time: number) => (segments.length * time) / n;
  const correlations: number[] = [];
  const limit = Math.min(maxLag, Math.floor(longest / 3));
  let time = 1;
  let last = Number.POSITIVE_INFINITY;
  let lag1 = 0;
  for (let lag = 1; lag <= limit; lag += 2) {
    const r1 = sumAt(segments, lag) / squares;
    if (lag === 1) lag1 = r1 + hidden(1);
    const r2 = sumAt(segments, lag + 1) / squares;
    // The pair rule starts with lags 0 and 1, whose sum is positive; here the pairs are (1, 2), (3, 4), ...
    const pair = Math.min(last, r1 + r2 + 2 * hidden(time));
    // A pair of autocorrelations of independent readings scatters by sqrt(2 / n); under one such spread nothing is claimed.
    if (!(pair > Math.sqrt(2 / n))) break;
    correlations.push(r1, r2);
    time += 2 * pair;
    last = pair;
  }
  return { lag1, ...total(correlations, hidden(time)) };
}

function total(correlations: readonly number[], hidden: number): Omit<CorrelationTime, "lag1"> {
  let mean = 1;
  let median = 1;
  for (const r of correlations) {
    const full = Math.min(1, Math.max(-1, r + hidden));
    mean += 2 * full;
    median += (4 / Math.PI) * Math.asin(full);
  }
  return { ofMean: Math.max(1, mean), ofMedian: Math.max(1, median) };
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
