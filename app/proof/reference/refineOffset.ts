import type { TimedStream } from "./TimedStream.ts";

/**
 * Sharpens a rough time offset: of the offsets within one and a half sampling intervals of it, the one for which the
 * slower stream is most nearly a straight function of the faster. Only readings taken while the load moves count:
 * those at rest say nothing of time. Comparing forces, not differences, lets late stamps average out.
 * @param roughS  to be added to the times of `other`
 * @param intervalS  sampling interval of the slower stream
 * @returns  the offset for the times of `other`, as `roughS`
 */
export function refineOffset(base: TimedStream, other: TimedStream, roughS: number, intervalS: number): number {
  const otherIsSlower = other.tS.length <= base.tS.length;
  const slow = otherIsSlower ? other : base;
  const fast = otherIsSlower ? base : other;
  const step = intervalS / 10;
  const moving = movingReadings(slow);
  const misfits = Array.from({ length: 31 }, (_, i) => {
    const offset = roughS + (i - 15) * step;
    return misfit(slow, fast, otherIsSlower ? offset : -offset, moving);
  });
  const at = Math.min(29, Math.max(1, misfits.indexOf(Math.min(...misfits))));
  const [a, b, c] = [misfits[at - 1]!, misfits[at]!, misfits[at + 1]!];
  const bend = a - 2 * b + c;
  const shift = bend > 0 ? Math.max(-1, Math.min(1, (0.5 * (a - c)) / bend)) : 0;
  return roughS + (at - 15 + shift) * step;
}

/** Readings that differ from a neighbour by 2 % of the greatest such difference, and one on each side of them. */
function movingReadings({ value }: TimedStream): readonly number[] {
  let most = 0;
  for (let i = 1; i < value.length; i += 1) most = Math.max(most, Math.abs(value[i]! - value[i - 1]!));
  const moves = (i: number) => i > 0 && i < value.length && Math.abs(value[i]! - value[i - 1]!) > 0.02 * most;
  return Array.from({ length: value.length }, (_, i) => i).filter(
    (i) => moves(i) || moves(i + 1) || moves(i - 1) || moves(i + 2),
  );
}

/** What a straight line leaves of the slow stream's variance, over the fast stream read at the same moments. */
function misfit(slow: TimedStream, fast: TimedStream, offsetS: number, places: readonly number[]): number {
  let j = 0;
  let n = 0;
  let [meanX, meanY, xx, xy, yy] = [0, 0, 0, 0, 0];
  for (const i of places) {
    const t = slow.tS[i]! + offsetS;
    while (j < fast.tS.length - 2 && fast.tS[j + 1]! <= t) j += 1;
    const span = fast.tS[j + 1]! - fast.tS[j]!;
    if (!(span > 0) || t < fast.tS[j]! || t > fast.tS[j + 1]!) continue;
    const x = fast.value[j]! + ((t - fast.tS[j]!) / span) * (fast.value[j + 1]! - fast.value[j]!);
    n += 1;
    // Running means keep the sums small: forces of kilonewtons with newtons between them.
    const dx = x - meanX;
    const dy = slow.value[i]! - meanY;
    meanX += dx / n;
    meanY += dy / n;
    xx += dx * (x - meanX);
    yy += dy * (slow.value[i]! - meanY);
    xy += dx * (slow.value[i]! - meanY);
  }
  return n < 4 || !(xx > 0 && yy > 0) ? 1 : 1 - (xy * xy) / (xx * yy);
}
