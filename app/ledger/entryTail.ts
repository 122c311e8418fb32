/** What stands behind the body of an entry's canonical form: everything of the envelope but the instant. */
export type EntryTail = {
  readonly id: string;
  readonly kind: string;
  readonly offsetMinutes: number;
  readonly origin: string;
  readonly prev: string;
  readonly seq: number;
};

const tailPattern =
  /,"id":"([0-9a-f-]{36})","kind":"([A-Za-z]{1,40})","offsetMinutes":(-?\d{1,3}),"origin":"([0-9a-f-]{36})","prev":"([0-9a-f]{64})","seq":(\d{1,15}),"v":1\}$/;
const TAIL_LENGTH = 320;

/**
 * Reads the envelope out of an entry's canonical bytes without parsing its body. Canonical form sorts members,
 * so `at` and `body` come first and the rest last; a walk over many thousand entries needs no more than that.
 * @param bytes  the canonical form, UTF-8
 * @returns  the tail, or undefined when the bytes are no entry
 */
export function entryTail(bytes: Uint8Array): EntryTail | undefined {
  const m = tailPattern.exec(asciiOf(bytes.subarray(Math.max(0, bytes.length - TAIL_LENGTH))));
  if (m === null) return undefined;
  return { id: m[1]!, kind: m[2]!, offsetMinutes: Number(m[3]), origin: m[4]!, prev: m[5]!, seq: Number(m[6]) };
}

/** Byte for character: the patterns match ASCII only, so what else the bytes mean does not matter. */
function asciiOf(bytes: Uint8Array): string {
  return String.fromCharCode(...bytes);
}
