/**
 * Decimals for a value and its expanded uncertainty: two digits of the uncertainty while the first is under 5, else
 * one; at most four decimals.
 * @param expanded  above 0, in the unit shown
 * @see JCGM 100:2008 7.2.6 (at most two significant digits)
 */
export function uncertaintyDecimals(expanded: number): number {
  const power = Math.floor(Math.log10(expanded));
  const lead = expanded / 10 ** power;
  return Math.min(4, Math.max(0, (lead < 5 ? 1 : 0) - power));
}
