import type { Random } from "../physics/Random.ts";

/** What a bad cable does to lines: a share of their bytes arrives altered, lost or doubled. */
export class Corruption {
  /** Chance of each byte to be hit, 0 to 1. */
  perByte = 0;
  /** Bytes hit so far. */
  hits = 0;
  readonly #random: Random;

  constructor(random: Random) {
    this.#random = random;
  }

  /** The line as it arrives. */
  spoil(line: string): string {
    if (this.perByte === 0) return line;
    let out = "";
    for (let i = 0; i < line.length; i += 1) {
      if (this.#random.uniform() >= this.perByte) out += line[i];
      else out += this.#hit(line[i]!);
    }
    return out;
  }

  #hit(byte: string): string {
    this.hits += 1;
    const kind = this.#random.below(4);
    if (kind === 0) return "";
    if (kind === 1) return byte + byte;
    if (kind === 2) return String.fromCharCode(this.#random.below(256));
    return String.fromCharCode(byte.charCodeAt(0) ^ (1 << this.#random.below(8)));
  }
}
