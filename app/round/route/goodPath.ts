import { improvePath, pathCost } from "./improvePath.ts";

/** Kicks per point, and the most of all: enough that small cases come out at their optimum, and 200 points in a second. */
const KICKS_PER_POINT = 40;
const MOST_WORK = 1_000_000;

/**
 * A short open path: the best of several starts improved by local search, then kicked and improved again. Always the
 * same path for the same points.
 * @param starts  orders to begin from, each with every point once
 * @see O. Martin, S. W. Otto, E. W. Felten, Complex Systems 5 (1991) 299 (kicks by a double bridge)
 */
export function goodPath(cost: Float64Array, n: number, starts: readonly (readonly number[])[]): number[] {
  let best: Int32Array = new Int32Array(starts[0]!);
  let bestCost = Number.POSITIVE_INFINITY;
  for (const start of starts) {
    const path = new Int32Array(start);
    improvePath(path, cost, n);
    const length = pathCost(path, cost, n);
    if (length < bestCost) [best, bestCost] = [path, length];
  }
  if (n < 4) return [...best];
  const next = fixedSequence();
  const kicks = Math.min(KICKS_PER_POINT * n, Math.floor(MOST_WORK / (n * n)));
  for (let k = 0; k < kicks; k += 1) {
    const path = kicked(best, next);
    improvePath(path, cost, n);
    const length = pathCost(path, cost, n);
    if (length < bestCost - 1e-9) [best, bestCost] = [path, length];
  }
  return [...best];
}

/** Three cuts at close places; the middle two parts change places. */
function kicked(path: Int32Array, next: () => number): Int32Array {
  const n = path.length;
  const span = Math.min(n, 30);
  const at = Math.floor(next() * (n - span + 1));
  const [a, b, c] = [0, 1, 2].map(() => at + Math.floor(next() * (span + 1))).sort((x, y) => x - y) as [
    number,
    number,
    number,
  ];
  const out = new Int32Array(n);
  out.set(path.subarray(0, a), 0);
  out.set(path.subarray(b, c), a);
  out.set(path.subarray(a, b), a + c - b);
  out.set(path.subarray(c), c);
  return out;
}

/** Numbers that jump about but are the same each time (mulberry32): a route must not change by itself. */
function fixedSequence(): () => number {
  let state = 0x5eed;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}
