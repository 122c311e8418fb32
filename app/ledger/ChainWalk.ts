import { entryTail } from "./entryTail.ts";
import { GENESIS } from "./genesis.ts";

/** SHA-256 of bytes, lower-case hex. */
export type HashBytes = (bytes: Uint8Array) => string;

/** An entry as it lies in the file: the columns beside it, and the canonical bytes. */
export type StoredEntry = {
  readonly seq: number;
  readonly kind: string;
  readonly hash: string;
  readonly bytes: Uint8Array;
};

/** What is wrong with an entry, the first thing found. */
export type EntryFault =
  | "unreadable" // the bytes are no entry
  | "altered" // the bytes do not give the hash stored beside them
  | "mislabelled" // the columns beside the bytes say something else than the bytes
  | "missing" // entries before this one are not there
  | "broken"; // does not name the hash of the entry before

/**
 * Walks one origin's chain, entry by entry, in order. After a fault the walk goes on from the stored hash, so one
 * damaged entry is named once and what still stands after it is seen.
 */
export class ChainWalk {
  readonly origin: string;
  readonly #hash: HashBytes;
  #prev: string;
  #seq: number;

  /** @param from  to begin in the middle: the last entry before, as the file has it */
  constructor(origin: string, hash: HashBytes, from: { seq: number; hash: string } = { seq: 0, hash: GENESIS }) {
    this.origin = origin;
    this.#hash = hash;
    this.#prev = from.hash;
    this.#seq = from.seq;
  }

  /** The entry last taken: its number and the hash stored for it. */
  get head(): { readonly seq: number; readonly hash: string } {
    return { seq: this.#seq, hash: this.#prev };
  }

  /** Takes the next entry; answers what is wrong with it, or undefined. */
  take(entry: StoredEntry): EntryFault | undefined {
    const fault = this.#faultOf(entry);
    this.#prev = entry.hash;
    this.#seq = entry.seq;
    return fault;
  }

  #faultOf(entry: StoredEntry): EntryFault | undefined {
    if (this.#hash(entry.bytes) !== entry.hash) return "altered";
    if (entry.seq === this.#seq + 1 && this.#endsAsItShould(entry)) return undefined;
    const tail = entryTail(entry.bytes);
    if (tail === undefined) return "unreadable";
    if (tail.origin !== this.origin || tail.seq !== entry.seq || tail.kind !== entry.kind) return "mislabelled";
    return entry.seq === this.#seq + 1 ? "broken" : "missing";
  }

  /** Whether the envelope behind the body is the one expected: a plain comparison, since this is the inner loop of `verify`. */
  #endsAsItShould({ bytes, kind, seq }: StoredEntry): boolean {
    const end = `,"origin":"${this.origin}","prev":"${this.#prev}","seq":${seq},"v":1}`;
    const endAt = bytes.length - end.length;
    if (!isAt(bytes, endAt, end)) return false;
    let at = endAt;
    while (isNumeral(bytes[at - 1])) at -= 1;
    const middle = `,"kind":"${kind}","offsetMinutes":`;
    return at < endAt && isAt(bytes, at - middle.length, middle);
  }
}

function isAt(bytes: Uint8Array, at: number, text: string): boolean {
  if (at < 0) return false;
  for (let i = 0; i < text.length; i += 1) if (bytes[at + i] !== text.charCodeAt(i)) return false;
  return true;
}

const isNumeral = (byte: number | undefined) => byte !== undefined && ((byte >= 0x30 && byte <= 0x39) || byte === 0x2d);
