import type { Verdict } from "../../../app/verdict/Judgement.ts";

/**
 * The verdict's mark: a taper in its socket, seen from the side. How deep it sits is the verdict. Drawn in a box of
 * 24 by 28; page and chart use the same paths.
 */
export const MARK_WIDTH = 24;
export const MARK_HEIGHT = 28;

export const socketPath = "M1.8 11.2 5.4 26h13.2L22.2 11.2";

/** How far the taper stands out of the socket; undefined where no taper is drawn. */
const lift: Record<Verdict, number | undefined> = { good: 0, watch: 4.6, act: 8.6, stop: 8.6, cannotTell: undefined };

/** The taper, home at `lift` 0: it then fills the socket to its floor. */
export function taperPath(verdict: Verdict): string | undefined {
  const up = lift[verdict];
  return up === undefined ? undefined : `M4.6 ${round(9.4 - up)}h14.8l-3 13.4h-8.8z`;
}

/** `stop`: the socket is barred. */
export const barPath = "M3.6 18.6h16.8";
/** `cannotTell`: nothing to be seen in a dotted socket. */
export const dotAt = { x: 12, y: 15.5, radius: 2.6 };

const round = (value: number) => Math.round(value * 100) / 100;
