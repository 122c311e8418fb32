/** What a row of a proof was taken for. `creep30`, `creep300`: under the greatest load, or after its removal, 30 s and 300 s on. */
export type Direction = "up" | "down" | "zeroBefore" | "zeroAfter" | "creep30" | "creep300";

export const directions = [
  "up",
  "down",
  "zeroBefore",
  "zeroAfter",
  "creep30",
  "creep300",
] as const satisfies readonly Direction[];

/**
 * One reading of a proof, in the units its reference and its gauge show: a gauge may be proved in mV/V.
 * Everything computed from readings stays in these two units until a curve for the gauge is made of it.
 */
export type ProofReading = {
  readonly reference: number;
  /** As shown, the zero not yet taken off. */
  readonly indication: number;
  readonly direction: Direction;
  /** Loadings without a break between; undefined where nobody wrote it down. */
  readonly run: string | undefined;
  /** Readings of the same step belong together although their loads differ a little. */
  readonly step: string | undefined;
  /** How far the gauge was turned about its axis. */
  readonly positionDeg: number | undefined;
};
