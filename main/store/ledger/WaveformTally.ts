/**
 * Whether the waveforms in the file are those the checks name, without a look-up for each: one sum over all pairs
 * of cycle and hash as the checks have them, one as the waveform table has them. The product of both makes a swap
 * show. Equal sums: the same pairs (but for one chance in 2 ** 50). Unequal: somebody looks pair by pair.
 */
export class WaveformTally {
  count = 0;
  #first = 0;
  #second = 0;

  /** The pairs of a check, found in its canonical bytes: members are sorted, so a cycle's id comes before its hash. */
  addCheck(bytes: Buffer): void {
    let at = bytes.indexOf(HASH);
    let idAt = 0;
    while (at >= 0) {
      idAt = bytes.lastIndexOf(ID, at) + ID.length;
      this.add(
        bytes.toString("latin1", idAt, idAt + 36),
        bytes.toString("latin1", at + HASH.length, at + HASH.length + 64),
      );
      at = bytes.indexOf(HASH, at + HASH.length);
    }
  }

  add(cycleId: string, hash: string): void {
    this.count += 1;
    const id = Number.parseInt(cycleId.slice(24), 16) % PRIME;
    this.#first = (this.#first + id * (Number.parseInt(hash.slice(0, 12), 16) % PRIME)) % WRAP;
    this.#second = (this.#second + id * (Number.parseInt(hash.slice(12, 24), 16) % PRIME)) % WRAP;
  }

  get sums(): TallySums {
    return { count: this.count, first: this.#first, second: this.#second };
  }
}

export type TallySums = { readonly count: number; readonly first: number; readonly second: number };

export function addSums(all: readonly TallySums[]): TallySums {
  return all.reduce(
    (a, b) => ({ count: a.count + b.count, first: (a.first + b.first) % WRAP, second: (a.second + b.second) % WRAP }),
    { count: 0, first: 0, second: 0 },
  );
}

/** Without its first quotation mark: the search runs from one first byte to the next, and a `w` is rare. */
const HASH = Buffer.from('waveformHash":"');
const ID = Buffer.from('"cycleId":"');
const PRIME = 67_108_859; // below 2 ** 26: products stay exact
const WRAP = 2 ** 52;
