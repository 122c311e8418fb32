import type { Triple } from "./srgb.ts";

export type Deficiency = "protanopia" | "deuteranopia" | "tritanopia";

/**
 * Matrices on linear sRGB for the full deficiency (severity 1.0).
 * @see G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A Physiologically-based Model for Simulation of Color
 *      Vision Deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009) 1291, matrices of its supplement
 */
const matrices: Record<Deficiency, readonly [Triple, Triple, Triple]> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** What an eye with the deficiency gets of a colour; linear sRGB in and out, kept within the display's range. */
export function seenWith(deficiency: Deficiency, rgb: Triple): Triple {
  const seen = matrices[deficiency].map((row) => row.reduce((sum, m, i) => sum + m * rgb[i]!, 0));
  return seen.map((c) => Math.min(1, Math.max(0, c))) as unknown as Triple; // three rows, three channels
}
