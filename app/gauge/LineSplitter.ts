/** Where cut lines go. The bytes are lent until the call returns. */
export type LineReceiver = {
  /** One non-empty line: `bytes[from]` to before `bytes[to]`, without its end. */
  line(bytes: Uint8Array, from: number, to: number): void;
  /** A line longer than the limit has ended; its bytes are gone. */
  overlong(): void;
};

export type LineEnd = "CR" | "LF" | "ETX" | "any";

/** The byte that is looked for; a CR before the LF is then no part of the line. */
export const lineEnds = { CR: "CR", LF: "LF", CRLF: "LF", ETX: "ETX", any: "any" } as const;

/**
 * Cuts byte chunks into lines, wherever the chunk borders fall, without making strings; a line that lies whole
 * in its chunk is not even copied. A line longer than `maxLength` is dropped whole and counted: a port at the
 * wrong baud rate sends no line ends and must not fill the memory. CR, LF and (with `fill`) NUL and DEL at the
 * beginning of a line are no part of it. A cut-off last line is emitted by `end` only.
 */
export class LineSplitter {
  dropped = 0;
  readonly #kept: Uint8Array; // the beginning of a line whose end is in a later chunk
  #length = 0; // bytes of it so far; beyond the limit: overlong, waiting for its end
  readonly #first: number;
  readonly #second: number; // the same as #first where only one byte ends a line
  readonly #fill: boolean;
  readonly #after: number;
  #owed = 0; // bytes behind the end still to come

  /** @param after  bytes behind the line end that belong to the line, end included: a check that follows ETX */
  constructor(maxLength: number, end: LineEnd = "any", fill = false, after = 0) {
    if (!(maxLength >= 1)) throw new RangeError("maxLength must be at least one");
    this.#kept = new Uint8Array(maxLength);
    this.#first = end === "ETX" ? ETX : end === "LF" ? LF : CR;
    this.#second = end === "any" ? LF : this.#first;
    this.#fill = fill;
    this.#after = after;
  }

  /** Whether the next byte begins a line. */
  get atStart(): boolean {
    return this.#length === 0;
  }

  /** Takes the next chunk; hands on each line it completes. */
  push(chunk: Uint8Array, receiver: LineReceiver): void {
    for (let from = 0; from < chunk.length; ) from = this.next(chunk, from, receiver);
  }

  /** Takes the bytes from `from` on to the next line end or the chunk's; answers the position behind them. */
  next(chunk: Uint8Array, from: number, receiver: LineReceiver): number {
    const first = this.#first;
    const second = this.#second;
    const size = chunk.length;
    if (this.#owed > 0) return this.#settle(chunk, from, receiver);
    let at = from;
    while (at < size && chunk[at] !== first && chunk[at] !== second) at += 1;
    if (at === size) this.#keep(chunk, from, size);
    else if (this.#after > 0) {
      this.#keep(chunk, from, at + 1);
      this.#owed = this.#after;
    } else if (this.#length > 0) this.#finish(chunk, from, at, receiver);
    else this.#pass(chunk, from, at, receiver);
    return at + 1;
  }

  /** The position behind the line end at `at`, or -1 when there is none; a CR before the LF belongs to it. */
  behindEnd(chunk: Uint8Array, at: number): number {
    if (this.#after > 0) return chunk[at - 1 - this.#after] === this.#first ? at : -1;
    const p = this.#first === LF && at < chunk.length && chunk[at] === CR ? at + 1 : at;
    return p < chunk.length && (chunk[p] === this.#first || chunk[p] === this.#second) ? p + 1 : -1;
  }

  /** Hands on what has come since the last line end, for the end of a file. */
  end(receiver: LineReceiver): void {
    this.#owed = 0;
    if (this.#length > 0) this.#finish(this.#kept, 0, 0, receiver);
  }

  /** Forgets the line in work: its other part is lost. Answers whether there was one. */
  forget(): boolean {
    const had = this.#length > 0;
    this.#length = 0;
    this.#owed = 0;
    return had;
  }

  #pass(bytes: Uint8Array, from: number, to: number, receiver: LineReceiver): void {
    let start = from;
    while (start < to && this.#skips(bytes[start]!)) start += 1;
    if (start === to) return;
    if (to - start > this.#kept.length) this.#drop(receiver);
    else receiver.line(bytes, start, to);
  }

  /** Takes what is owed behind a line end; a start byte before that begins the next line all the same. */
  #settle(chunk: Uint8Array, from: number, receiver: LineReceiver): number {
    let to = from;
    while (to < chunk.length && this.#owed > 0 && chunk[to] !== STX) {
      to += 1;
      this.#owed -= 1;
    }
    if (to === chunk.length && this.#owed > 0) this.#keep(chunk, from, to);
    else {
      this.#owed = 0;
      this.#finish(chunk, from, to, receiver);
    }
    return to;
  }

  #finish(chunk: Uint8Array, from: number, to: number, receiver: LineReceiver): void {
    const length = this.#length + to - from;
    if (length <= this.#kept.length) this.#copy(chunk, from, to);
    this.#length = 0;
    if (length > this.#kept.length) this.#drop(receiver);
    else receiver.line(this.#kept, 0, length);
  }

  #keep(chunk: Uint8Array, from: number, to: number): void {
    let start = from;
    if (this.#length === 0) while (start < to && this.#skips(chunk[start]!)) start += 1;
    const length = this.#length + to - start;
    if (length <= this.#kept.length) this.#copy(chunk, start, to);
    this.#length = Math.min(length, this.#kept.length + 1); // a count that cannot overflow on a stream without ends
  }

  /** A plain loop: for the few bytes of a line it beats a call into `set`. */
  #copy(chunk: Uint8Array, from: number, to: number): void {
    const kept = this.#kept;
    for (let i = from, k = this.#length; i < to; i += 1, k += 1) kept[k] = chunk[i]!;
  }

  #drop(receiver: LineReceiver): void {
    this.dropped += 1;
    receiver.overlong();
  }

  #skips(byte: number): boolean {
    return byte === CR || byte === LF || (this.#fill && (byte === NUL || byte === DEL));
  }
}

const NUL = 0x00;
const STX = 0x02;
const ETX = 0x03;
const LF = 0x0a;
const CR = 0x0d;
const DEL = 0x7f;
