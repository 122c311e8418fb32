import type { CycleFlag } from "../Cycle.ts";
import type { Trace } from "../phase/Trace.ts";
import { type Ground, readingsIn } from "./Ground.ts";
import type { Stretch } from "./readCycle.ts";

/** Prepares a stretch for reading: what was overload or clipped is no reading, but force all the same. */
export function groundOf(s: Stretch, flags: Set<CycleFlag>): Ground {
  const first = Math.max(0, s.onset - readingsIn(s.trace, 0.5, 64));
  const w = workingCopy(s.trace, first);
  const over = overloaded(s, w);
  const ground = {
    trace: s.trace,
    first,
    zeroN: s.zeroN,
    baseN: s.baseN,
    sigmaN: s.sigmaN,
    stepN: s.stepN,
    onset: s.onset,
    end: s.end,
  };
  if (over === undefined) return { ...ground, w, shape: w, over };
  flags.add("overload");
  const top = Math.max(greatestShown(s, w, over), s.capacityN ?? Number.NEGATIVE_INFINITY, s.zeroN + 2 * s.leastN);
  const shape = w.slice();
  for (let i = s.onset; i < s.end; i += 1) {
    if (over[i] === 0) continue;
    w[i] = Number.NaN;
    shape[i] = top;
  }
  return { ...ground, w, shape, over };
}

let kept = new Float64Array(1 << 14);

/** Used again for each stretch: it lives no longer than its reading, and the memory would be new each time. */
function workingCopy(trace: Trace, first: number): Float64Array {
  if (kept.length < trace.length) kept = new Float64Array(trace.values.length);
  const w = kept.subarray(0, trace.length);
  w.set(trace.values.subarray(first, trace.length), first);
  return w;
}

/** Marks overload lines, and the clipped value: three and more equal readings in a row, at the capacity or above. */
function overloaded(s: Stretch, w: Float64Array): Uint8Array | undefined {
  let over: Uint8Array | undefined;
  const mark = (from: number, to: number) => {
    over ??= new Uint8Array(w.length);
    over.fill(1, from, to);
  };
  for (let i = s.onset; i < s.end; i += 1) if (w[i] === Number.POSITIVE_INFINITY) mark(i, i + 1);
  if (s.capacityN === undefined) return over;
  const floor = s.capacityN * (1 - 1e-9) - s.stepN / 2;
  for (let i = s.onset; i < s.end; i += 1) {
    if (!(w[i]! >= floor && w[i]! < Number.POSITIVE_INFINITY)) continue;
    let next = i + 1;
    while (next < s.end && w[next] === w[i]) next += 1;
    if (next - i >= 3) mark(i, next);
    i = next - 1;
  }
  return over;
}

function greatestShown(s: Stretch, w: Float64Array, over: Uint8Array): number {
  let top = Number.NEGATIVE_INFINITY;
  for (let i = s.onset; i < s.end; i += 1) if (over[i] === 0 && w[i]! > top) top = w[i]!;
  return top;
}
