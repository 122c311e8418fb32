/**
 * Improves an open path until no reversal of a stretch (2-opt) and no moving of up to three neighbours, either way round,
 * to another place (or-opt) makes it shorter.
 * @param path  positions in order, changed in place
 * @param cost  n x n, symmetric
 * @see G. A. Croes, Oper. Res. 6 (1958) 791; I. Or, dissertation, Northwestern University (1976)
 */
export function improvePath(path: Int32Array, cost: Float64Array, n: number): void {
  // Plain loops over typed arrays: this runs some hundred times for 200 machines within a second.
  for (let changed = true; changed; ) {
    changed = reversals(path, cost, n);
    if (movings(path, cost, n)) changed = true;
  }
}

/** What the path costs. */
export function pathCost(path: ArrayLike<number>, cost: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 1; i < path.length; i += 1) sum += cost[path[i - 1]! * n + path[i]!]!;
  return sum;
}

const LEAST_GAIN = 1e-9;

function reversals(path: Int32Array, cost: Float64Array, n: number): boolean {
  const size = path.length;
  let any = false;
  for (let i = 0; i < size - 1; i += 1) {
    for (let j = i + 1; j < size; j += 1) {
      const [first, last] = [path[i]!, path[j]!];
      let gain = 0;
      if (i > 0) gain += cost[path[i - 1]! * n + first]! - cost[path[i - 1]! * n + last]!;
      if (j < size - 1) gain += cost[last * n + path[j + 1]!]! - cost[first * n + path[j + 1]!]!;
      if (gain <= LEAST_GAIN) continue;
      path.subarray(i, j + 1).reverse();
      any = true;
    }
  }
  return any;
}

function movings(path: Int32Array, cost: Float64Array, n: number): boolean {
  const size = path.length;
  let any = false;
  const step = (a: number, b: number) => (a < 0 || b >= size ? 0 : cost[path[a]! * n + path[b]!]!);
  for (let length = 1; length <= 3 && length < size; length += 1) {
    for (let i = 0; i + length <= size; i += 1) {
      const end = i + length - 1;
      const bridge = i > 0 && end < size - 1 ? cost[path[i - 1]! * n + path[end + 1]!]! : 0;
      const freed = step(i - 1, i) + step(end, end + 1) - bridge;
      if (freed <= LEAST_GAIN) continue;
      for (let to = -1; to < size; to += 1) {
        if (to >= i - 1 && to <= end) continue; // between `to` and `to + 1`
        const gap = to < 0 || to === size - 1 ? 0 : cost[path[to]! * n + path[to + 1]!]!;
        const ahead = link(path, cost, n, to, path[i]!, path[end]!);
        const turned = link(path, cost, n, to, path[end]!, path[i]!);
        if (freed - (Math.min(ahead, turned) - gap) <= LEAST_GAIN) continue;
        move(path, i, end, to, turned < ahead);
        any = true;
        break;
      }
    }
  }
  return any;
}

function link(path: Int32Array, cost: Float64Array, n: number, to: number, first: number, last: number): number {
  const before = to < 0 ? 0 : cost[path[to]! * n + first]!;
  return before + (to === path.length - 1 ? 0 : cost[last * n + path[to + 1]!]!);
}

function move(path: Int32Array, from: number, end: number, to: number, turned: boolean): void {
  const part = path.slice(from, end + 1);
  if (turned) part.reverse();
  if (to < from) {
    path.copyWithin(to + 1 + part.length, to + 1, from);
    path.set(part, to + 1);
  } else {
    path.copyWithin(from, end + 1, to + 1);
    path.set(part, to + 1 - part.length);
  }
}
