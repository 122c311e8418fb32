import type { LinePattern } from "../linePattern.ts";
import { fitsParity, type Parity } from "../ParityStripper.ts";

/**
 * Finds out whether eight-bit bytes are seven bits with a parity bit. Nearly all of them must fit one parity, and
 * what is left without it must be text: random bytes fit every other parity half of the time.
 */
export function findParity(bytes: Uint8Array): LinePattern["parity"] {
  const seen = new Uint32Array(256);
  for (const byte of bytes) seen[byte]! += 1;
  let high = 0;
  for (let byte = 0x80; byte < 256; byte += 1) high += seen[byte]!;
  if (high < 0.02 * bytes.length) return "none";
  let best: LinePattern["parity"] = "none";
  let most = 0.9 * bytes.length;
  for (const parity of ["even", "odd", "mark"] satisfies Parity[]) {
    let fits = 0;
    for (let byte = 0; byte < 256; byte += 1) {
      if (fitsParity(byte, parity) && isText(byte & 0x7f)) fits += seen[byte]!;
    }
    if (fits < most) continue;
    best = parity;
    most = fits;
  }
  return best;
}

const isText = (byte: number) => (byte >= 0x20 && byte < 0x7f) || (byte >= 0x02 && byte <= 0x0d) || byte === 0;
