import { type Ground, readingsIn } from "./Ground.ts";

/** Slips of 2 % count; a little less is asked of the estimate, so that a slip of just 2 % is seen. */
const leastSlip = 0.0175;

/**
 * Whether the force steps inside the hold: means of a quarter of a second before and after a tenth of a second, moved
 * along the hold. Creep changes less in that time, and the ring, which is waited out, averages away.
 * @param levelN  net force of the hold
 * @param memory  how many neighbouring readings count as one (noise that is correlated)
 */
export function stepsInHold(g: Ground, arrival: number, holdEnd: number, levelN: number, memory: number): boolean {
  const from = ringEnd(g, arrival, holdEnd, levelN);
  const readings = new Float64Array(Math.max(0, holdEnd + 1 - from));
  let n = 0;
  for (let i = from; i <= holdEnd; i += 1) {
    const v = g.w[i]!;
    if (!Number.isNaN(v)) readings[n++] = v - g.zeroN;
  }
  const width = Math.min(readingsIn(g.trace, 0.25, 8), Math.floor(n / 3));
  if (width < 2) return false;
  const gap = Math.min(readingsIn(g.trace, 0.1, 1), width);
  const limit = Math.max(leastSlip * levelN, 5 * g.sigmaN * Math.sqrt((2 * memory) / width), 1.5 * g.stepN);
  return greatestStep(readings, n, width, gap) > limit;
}

function greatestStep(readings: Float64Array, n: number, width: number, gap: number): number {
  let before = 0;
  let after = 0;
  for (let i = 0; i < width; i += 1) {
    before += readings[i]!;
    after += readings[i + width + gap] ?? 0;
  }
  let greatest = 0;
  for (let i = 0; i + 2 * width + gap <= n; i += 1) {
    greatest = Math.max(greatest, Math.abs(after - before));
    before += readings[i + width]! - readings[i]!;
    after += (readings[i + 2 * width + gap] ?? 0) - readings[i + width + gap]!;
  }
  return greatest / width;
}

/** First reading after which the swing within 60 ms (five readings at least) is that of the noise, or 1 %. */
function ringEnd(g: Ground, arrival: number, holdEnd: number, levelN: number): number {
  const width = readingsIn(g.trace, 0.06, 5);
  const quiet = Math.max(0.01 * levelN, 8 * g.sigmaN, 2.2 * g.stepN);
  const latest = arrival + Math.floor((holdEnd - arrival) / 3);
  for (let from = arrival; from < latest; from += Math.max(1, width >> 1)) {
    let least = Number.POSITIVE_INFINITY;
    let most = Number.NEGATIVE_INFINITY;
    for (let i = from; i < from + width && i <= holdEnd; i += 1) {
      if (g.w[i]! < least) least = g.w[i]!;
      if (g.w[i]! > most) most = g.w[i]!;
    }
    if (most - least <= quiet) return from;
  }
  return latest;
}
