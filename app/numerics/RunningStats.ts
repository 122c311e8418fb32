/**
 * Count, mean, standard deviation, least and greatest of readings that are not kept.
 * Updated about the running mean, so a large common offset costs no digits.
 * @see B. P. Welford, Note on a method for calculating corrected sums of squares and products, Technometrics 4 (1962) 419
 */
export class RunningStats {
  n = 0;
  mean = 0;
  least = Number.POSITIVE_INFINITY;
  greatest = Number.NEGATIVE_INFINITY;
  #squares = 0;

  /** @throws RangeError  the value is not finite */
  add(value: number): void {
    if (!Number.isFinite(value)) throw new RangeError(`RunningStats requires finite values, got ${value}`);
    this.n += 1;
    const d = value - this.mean;
    this.mean += d / this.n;
    this.#squares += d * (value - this.mean);
    if (value < this.least) this.least = value;
    if (value > this.greatest) this.greatest = value;
  }

  /** With n - 1 in the divisor; undefined below two readings. */
  get stdDev(): number | undefined {
    return this.n < 2 ? undefined : Math.sqrt(this.#squares / (this.n - 1));
  }
}
