import type { Random } from "./Random.ts";

export type NoiseOptions = {
  /** Standard deviation of the part that is new with each reading, newtons. */
  readonly whiteN: number;
  /** Standard deviation of the part that wanders, newtons. */
  readonly wanderN: number;
  /** Time in which the wandering part forgets itself, seconds. */
  readonly memoryS: number;
};

/** Noise of a gauge: white, and one that remembers (autocorrelated, first order). */
export class Noise {
  readonly #random: Random;
  readonly #options: NoiseOptions;
  readonly #keep: number; // share of the wandering part that stays for the next reading
  #wander = 0;

  constructor(options: NoiseOptions, stepS: number, random: Random) {
    this.#options = options;
    this.#random = random;
    this.#keep = options.memoryS > 0 ? Math.exp(-stepS / options.memoryS) : 0;
  }

  /** The next reading's noise, newtons. */
  next(): number {
    const { whiteN, wanderN } = this.#options;
    const fresh = Math.sqrt(1 - this.#keep ** 2) * wanderN * this.#random.normal();
    this.#wander = this.#keep * this.#wander + fresh;
    return whiteN * this.#random.normal() + this.#wander;
  }
}
