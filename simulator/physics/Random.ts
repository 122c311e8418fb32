/**
 * Repeatable randomness for the simulator: the same seed gives the same numbers on every machine. The generator is
 * Doty-Humphrey's small fast counter (sfc32, public domain); it passes the usual batteries and is nothing for secrets.
 */
export class Random {
  #a: number;
  #b: number;
  #c: number;
  #counter = 1;
  #spare: number | undefined; // the second of each pair of normal deviates

  constructor(seed: number) {
    this.#a = 0x9e3779b9;
    this.#b = seed | 0;
    this.#c = Math.floor(seed / 2 ** 32) | 0;
    for (let i = 0; i < 15; i += 1) this.#next(); // so that seeds which differ in one bit part ways
  }

  /** Evenly spread in [0, 1). */
  uniform(): number {
    return (this.#next() >>> 0) / 2 ** 32;
  }

  /** Evenly spread in [low, high). */
  between(low: number, high: number): number {
    return low + (high - low) * this.uniform();
  }

  /** A whole number from 0 to below `n`. */
  below(n: number): number {
    return Math.floor(this.uniform() * n);
  }

  /** Normal with mean 0 and standard deviation 1 (Box and Muller, Ann. Math. Stat. 29 (1958) 610). */
  normal(): number {
    const spare = this.#spare;
    this.#spare = undefined;
    if (spare !== undefined) return spare;
    const radius = Math.sqrt(-2 * Math.log(1 - this.uniform()));
    const angle = 2 * Math.PI * this.uniform();
    this.#spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  }

  /** A generator of its own for one part of the whole: what the others draw does not disturb it. */
  branch(): Random {
    return new Random(this.#next() >>> 0);
  }

  #next(): number {
    const sum = (this.#a + this.#b + this.#counter) | 0;
    this.#counter = (this.#counter + 1) | 0;
    this.#a = this.#b ^ (this.#b >>> 9);
    this.#b = (this.#c + (this.#c << 3)) | 0;
    this.#c = (((this.#c << 21) | (this.#c >>> 11)) + sum) | 0;
    return sum;
  }
}
