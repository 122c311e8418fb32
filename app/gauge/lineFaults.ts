/** Whether any byte has more than seven bits. */
export function hasHighBit(bytes: Uint8Array, from: number, to: number): boolean {
  for (let i = from; i < to; i += 1) if (bytes[i]! > 0x7f) return true;
  return false;
}

/** The places of CR and LF inside a line that should have none: what is left where another line end was lost. */
export function strayEnds(bytes: Uint8Array, from: number, to: number): number[] {
  const ends: number[] = [];
  for (let i = from; i < to; i += 1) if (bytes[i] === 0x0d || bytes[i] === 0x0a) ends.push(i);
  return ends;
}
