import { GENESIS } from "./entry.ts";
import { entryTail } from "./entryTail.ts";

/** SHA-256 of bytes, lower-case hex. */
export type HashBytes = (bytes: Uint8Array) => string;

/** An entry as it lies in the file: the columns beside it, and the canonical bytes. */
export type StoredEntry = {
  readonly origin: string;
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
    const tail = entryTail(entry.bytes);
    if (this.#hash(entry.bytes) !== entry.hash) return "altered";
    if (tail === undefined) return "unreadable";
    if (tail.origin !== this.origin || tail.seq !== entry.seq || tail.kind !== entry.kind) return "mislabelled";
    if (entry.seq !== this.#seq + 1) return "missing";
    return tail.prev === this.#prev ? undefined : "broken";
  }
}
