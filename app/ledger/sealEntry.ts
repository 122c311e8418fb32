import { canonicalJson } from "./canonicalJson.ts";
import type { Entry } from "./entry.ts";

/** SHA-256 of a text's UTF-8 bytes, lower-case hex. The core has no hash of its own; it is handed in. */
export type HashText = (text: string) => string;

/** An entry with the canonical form that is stored, and the hash the next entry of its origin will name. */
export type SealedEntry = { readonly entry: Entry; readonly text: string; readonly hash: string };

/**
 * Writes an entry in canonical form and hashes it. The hash is over the whole entry, the hash of the one
 * before among it: changing, leaving out or moving any entry breaks every hash after it.
 * @param entry  complete, its `prev` the hash of the entry before in the same origin's chain
 */
export function sealEntry(entry: Entry, hash: HashText): SealedEntry {
  const text = canonicalJson(entry);
  return { entry, text, hash: hash(text) };
}
