/** Whether any byte has more than seven bits. */
export function hasHighBit(bytes: Uint8Array, from: number, to: number): boolean {
  for (let i = from; i < to; i += 1) if (bytes[i]! > 0x7f) return true;
  return false;
}

/** The non-empty parts of a line between CRs and LFs that it should not have: what is left where a line end was lost. */
export function partsOf(bytes: Uint8Array, from: number, to: number): { readonly from: number; readonly to: number }[] {
  const parts: { from: number; to: number }[] = [];
  let start = from;
  for (let i = from; i <= to; i += 1) {
    if (i < to && bytes[i] !== 0x0d && bytes[i] !== 0x0a) continue;
    if (i > start) parts.push({ from: start, to: i });
    start = i + 1;
  }
  return parts;
}
