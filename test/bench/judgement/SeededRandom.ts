/**
 * Random numbers that come out the same every time: xoshiro128** by Blackman and Vigna (public domain), seeded by
 * splitmix32, with the draws that JCGM 101:2008 6.4 needs.
 */
export class SeededRandom {
  readonly #s = new Uint32Array(4);
  #spare: number | undefined;

  constructor(seed: number) {
    let state = seed >>> 0;
    for (let i = 0; i < 4; i += 1) {
      state = (state + 0x9e3779b9) >>> 0;
      let z = state;
      z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
      z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
      this.#s[i] = (z ^ (z >>> 16)) >>> 0;
    }
  }

  #word(): number {
    const s = this.#s;
    const five = Math.imul(s[1]!, 5);
    const result = Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
    const t = s[1]! << 9;
    s[2]! ^= s[0]!;
    s[3]! ^= s[1]!;
    s[1]! ^= s[2]!;
    s[0]! ^= s[3]!;
    s[2]! ^= t;
    s[3] = (s[3]! << 11) | (s[3]! >>> 21);
    return result;
  }

  /** Between 0 and 1, neither of them. */
  unit(): number {
    return (this.#word() + 0.5) / 4294967296;
  }

  /** Within ± half-width. */
  rectangle(halfWidth: number): number {
    return halfWidth * (2 * this.unit() - 1);
  }

  /** Each factor as likely as the next, from `least` to `most`. */
  logUniform(least: number, most: number): number {
    return least * (most / least) ** this.unit();
  }

  whole(least: number, most: number): number {
    return least + Math.floor(this.unit() * (most - least + 1));
  }

  /** Standard normal, by Marsaglia's polar method. */
  normal(): number {
    if (this.#spare !== undefined) {
      const spare = this.#spare;
      this.#spare = undefined;
      return spare;
    }
    for (;;) {
      const x = 2 * this.unit() - 1;
      const y = 2 * this.unit() - 1;
      const r = x * x + y * y;
      if (r >= 1 || r === 0) continue;
      const f = Math.sqrt((-2 * Math.log(r)) / r);
      this.#spare = y * f;
      return x * f;
    }
  }

  /** Chi-square, by Marsaglia and Tsang's gamma method (ACM TOMS 26, 2000, 363). */
  chiSquare(degrees: number): number {
    if (degrees < 2) return this.chiSquare(degrees + 2) * this.unit() ** (2 / degrees);
    const d = degrees / 2 - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = this.normal();
      const v = (1 + c * x) ** 3;
      if (v > 0 && Math.log(this.unit()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return 2 * d * v;
    }
  }

  /** Student's t. */
  t(degrees: number): number {
    return this.normal() / Math.sqrt(this.chiSquare(degrees) / degrees);
  }
}
