/**
 * Thins a run of readings to what a screen can show: of each column the first, last, least and greatest stay, in their
 * order, so no peak is lost. Shorter runs come back as they are.
 * @param t  times or numbers, rising
 * @param forceN  as long as `t`
 * @param columns  how many columns; at most four readings of each stay
 */
export function thin(
  t: readonly number[],
  forceN: readonly number[],
  columns: number,
): { readonly t: readonly number[]; readonly forceN: readonly number[] } {
  const n = t.length;
  if (n <= columns * 4) return { t, forceN };
  const keptT: number[] = [];
  const keptN: number[] = [];
  for (let column = 0; column < columns; column += 1) {
    const from = Math.floor((column * n) / columns);
    const to = Math.floor(((column + 1) * n) / columns) - 1;
    for (const i of landmarks(forceN, from, to)) {
      keptT.push(t[i]!);
      keptN.push(forceN[i]!);
    }
  }
  return { t: keptT, forceN: keptN };
}

/** First, least, greatest and last of a stretch, each once, in rising order. */
function landmarks(values: readonly number[], from: number, to: number): number[] {
  let least = from;
  let greatest = from;
  for (let i = from + 1; i <= to; i += 1) {
    if (values[i]! < values[least]!) least = i;
    if (values[i]! > values[greatest]!) greatest = i;
  }
  return [...new Set([from, Math.min(least, greatest), Math.max(least, greatest), to])];
}
