import type { ProofRefusal } from "./proofRefusal.ts";

/** What a proof may be told beside its readings; each absent where nobody knows it. */
export type ProofOptions = {
  /** Degree of the curve; absent: the method's own choice. */
  readonly degree?: number | undefined;
  /** Step of the gauge's last digit, in the indication's unit. */
  readonly resolution?: number | undefined;
  /** Relative standard uncertainty (k = 1) of the reference force, a fraction: one for all forces, or one for each. */
  readonly referenceRelative?: number | ((reference: number) => number) | undefined;
  /** Change of the gauge's sensitivity per kelvin (a fraction), and by how much the temperature went up and down in all. */
  readonly temperature?: { readonly perKelvin: number; readonly rangeK: number } | undefined;
};

/** A proof that cannot be computed, and why: in one English sentence, and as a code with its figures for other languages. */
export type ProofRefused = { readonly refused: string; readonly why: ProofRefusal };

/** The reference's relative standard uncertainty at a force; undefined where nobody knows it. */
export function referenceShare({ referenceRelative }: ProofOptions, reference: number): number | undefined {
  return typeof referenceRelative === "function" ? referenceRelative(reference) : referenceRelative;
}

export const isRefused = <T extends object>(result: T | ProofRefused): result is ProofRefused => "refused" in result;
