/** The ways of checking a span of bytes that gauges use. */
export type ChecksumMethod = "xor" | "sum256" | "negativeSum256" | "digitSum10" | "byteSum10" | "luhn10" | "weight31";

/**
 * The check value of `bytes[from]` to before `bytes[to]`: 0 to 255 for `xor` and the sums modulo 256, 0 to 9 for the rest.
 * `luhn10` and `weight31` weigh the digits from the right (2 1 2 …, 3 1 3 …) and pass over other characters.
 * @see XOR: longitudinal check, ISO 1155; `luhn10`: ISO/IEC 7812-1 annex B; `weight31`: GS1 General Specifications 7.9
 */
export function checksumOf(method: ChecksumMethod, bytes: Uint8Array, from: number, to: number): number {
  let sum = 0;
  switch (method) {
    case "xor":
      for (let i = from; i < to; i += 1) sum ^= bytes[i]!;
      return sum;
    case "sum256":
      for (let i = from; i < to; i += 1) sum += bytes[i]!;
      return sum & 0xff;
    case "negativeSum256":
      for (let i = from; i < to; i += 1) sum -= bytes[i]!;
      return sum & 0xff;
    case "byteSum10":
      for (let i = from; i < to; i += 1) sum += bytes[i]!;
      return sum % 10;
    default:
      return weightedDigits(method, bytes, from, to);
  }
}

function weightedDigits(method: ChecksumMethod, bytes: Uint8Array, from: number, to: number): number {
  let sum = 0;
  let heavy = true; // the rightmost digit is weighed
  for (let i = to - 1; i >= from; i -= 1) {
    const digit = bytes[i]! - 0x30;
    if (digit < 0 || digit > 9) continue;
    if (method === "digitSum10" || !heavy) sum += digit;
    else if (method === "weight31") sum += 3 * digit;
    else sum += digit > 4 ? 2 * digit - 9 : 2 * digit;
    heavy = !heavy;
  }
  return sum % 10;
}
