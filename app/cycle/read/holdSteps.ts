import { type Ground, readingsIn } from "./Ground.ts";
import { ringEnd } from "./ringPeriod.ts";

/** Slips of 2 % count; a little less is asked of the estimate, so that a slip of just 2 % is seen. */
const leastSlip = 0.0175;

/**
 * Whether the force steps inside the hold: means of a quarter of a second before and after a tenth of a second, moved
 * along the hold. Creep changes less in that time, and the ring, which is waited out, averages away.
 * @param levelN  net force of the hold
 * @param memory  how many neighbouring readings count as one (noise that is correlated)
 */
export function stepsInHold(g: Ground, arrival: number, holdEnd: number, levelN: number, memory: number): boolean {
  const from = ringEnd(g, arrival, arrival + Math.floor((holdEnd - arrival) / 3), levelN, 0.01);
  const wanted = Math.min(readingsIn(g.trace, 0.25, 4), Math.floor((holdEnd + 1 - from) / 3));
  if (wanted < 2) return false;
  // At high rates a few readings at a time are averaged first: a slip is no sharper for looking at each.
  const each = Math.max(1, wanted >> 5);
  const blocks = blockMeans(g, from, holdEnd + 1, each);
  const width = Math.floor(wanted / each);
  const gap = Math.min(Math.max(1, Math.round(readingsIn(g.trace, 0.1, 1) / each)), width);
  const limit = Math.max(leastSlip * levelN, 5 * g.sigmaN * Math.sqrt((2 * memory) / (width * each)), 1.5 * g.stepN);
  return greatestStep(blocks, width, gap) > limit;
}

/** Means of `each` readings; places without one are stepped over. */
function blockMeans(g: Ground, from: number, to: number, each: number): Float64Array {
  const means = new Float64Array(Math.ceil((to - from) / each));
  let n = 0;
  let sum = 0;
  let count = 0;
  for (let i = from; i < to; i += 1) {
    const v = g.w[i]! - g.zeroN;
    if (Number.isNaN(v)) continue;
    sum += v;
    count += 1;
    if (count < each) continue;
    means[n++] = sum / each;
    sum = 0;
    count = 0;
  }
  return means.subarray(0, n);
}

function greatestStep(blocks: Float64Array, width: number, gap: number): number {
  if (blocks.length < 2 * width + gap) return 0;
  let before = 0;
  let after = 0;
  for (let i = 0; i < width; i += 1) {
    before += blocks[i]!;
    after += blocks[i + width + gap]!;
  }
  let greatest = Math.abs(after - before);
  for (let i = 0; i + 2 * width + gap < blocks.length; i += 1) {
    before += blocks[i + width]! - blocks[i]!;
    after += blocks[i + 2 * width + gap]! - blocks[i + width + gap]!;
    greatest = Math.max(greatest, Math.abs(after - before));
  }
  return greatest / width;
}
