/** The last bytes that came and how long they took to come: for showing raw lines and for learning from them. */
export class ByteTail {
  readonly #ring: Uint8Array;
  #at = 0; // where the next byte goes
  #length = 0;
  #total = 0;
  #lastMs = 0;
  #marks: { readonly total: number; readonly ms: number }[] = []; // what had come before each moment

  constructor(limit: number) {
    this.#ring = new Uint8Array(limit);
  }

  push(chunk: Uint8Array, atMs: number): void {
    this.#lastMs = atMs;
    if (atMs - (this.#marks.at(-1)?.ms ?? Number.NEGATIVE_INFINITY) >= MARK_MS) this.#mark(atMs);
    this.#total += chunk.length;
    const size = this.#ring.length;
    const kept = chunk.length > size ? chunk.subarray(chunk.length - size) : chunk;
    const room = size - this.#at;
    this.#ring.set(kept.subarray(0, room), this.#at);
    if (kept.length > room) this.#ring.set(kept.subarray(room), 0);
    this.#at = (this.#at + kept.length) % size;
    this.#length = Math.min(size, this.#length + kept.length);
  }

  /** A copy, oldest first. */
  bytes(): Uint8Array {
    const size = this.#ring.length;
    const from = (this.#at - this.#length + size) % size;
    const first = Math.min(this.#length, size - from);
    const out = new Uint8Array(this.#length);
    out.set(this.#ring.subarray(from, from + first));
    out.set(this.#ring.subarray(0, this.#length - first), first);
    return out;
  }

  /** Seconds the kept bytes took to arrive, to about 50 ms; undefined until two moments of arrival are known. */
  get durationS(): number | undefined {
    const oldest = this.#total - this.#length;
    const first = this.#marks.find((mark) => mark.total >= oldest);
    return first === undefined || first.ms >= this.#lastMs ? undefined : (this.#lastMs - first.ms) / 1_000;
  }

  #mark(ms: number): void {
    this.#marks.push({ total: this.#total, ms });
    if (this.#marks.length < MARKS) return;
    const oldest = this.#total - this.#length;
    this.#marks = this.#marks.filter((mark) => mark.total >= oldest).slice(-MARKS / 2);
  }
}

const MARK_MS = 50;
const MARKS = 4_096;
