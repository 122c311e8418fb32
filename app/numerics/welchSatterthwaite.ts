/**
 * Effective degrees of freedom of a combined standard uncertainty: how well it is known when its parts are known
 * with different reliability.
 * @param parts  independent contributions to the result in one unit; degrees of freedom above 0, Infinity where the value is taken as known
 * @returns  at least the smallest of the parts' degrees of freedom; Infinity when no part has any limit (or all are 0)
 * @throws RangeError  a negative or unfinite uncertainty, degrees of freedom not above 0
 * @see JCGM 100:2008 (GUM) G.4.1, eq. G.2b
 */
export function welchSatterthwaite(
  parts: readonly { readonly standard: number; readonly degreesOfFreedom: number }[],
): number {
  let variance = 0;
  for (const { standard, degreesOfFreedom } of parts) {
    if (!(standard >= 0 && standard < Infinity))
      throw new RangeError(`welchSatterthwaite requires uncertainties of 0 and more, got ${standard}`);
    if (!(degreesOfFreedom > 0))
      throw new RangeError(`welchSatterthwaite requires degrees of freedom above 0, got ${degreesOfFreedom}`);
    variance += standard * standard;
  }
  let spread = 0;
  for (const { standard, degreesOfFreedom } of parts) {
    const share = variance === 0 ? 0 : (standard * standard) / variance; // shares: fourth powers would under- or overflow
    spread += (share * share) / degreesOfFreedom;
  }
  return 1 / spread;
}
