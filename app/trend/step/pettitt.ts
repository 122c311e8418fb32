import { ascendingOrder } from "../../numerics/ascendingOrder.ts";

export type Pettitt = {
  /** Greatest |U|. */
  readonly k: number;
  /** U there, with its sign: below 0, the values after it are the greater ones. */
  readonly u: number;
  /** Last value of the first part, counted from 1; the first such place where several are equal. */
  readonly index: number;
  /** Approximate, two-sided, at most 1. */
  readonly p: number;
};

/**
 * Pettitt's test: is there one place where the values before and after come from different levels. It asks for ranks
 * only, so one wild value does not mislead it; a plain slope does: see `findSteps`.
 * @param values  in the order they came, each finite; two or more
 * @returns  the place and its approximate p; under about ten values p cannot fall to 0.05
 * @throws RangeError  fewer than two values
 * @see A. N. Pettitt, Applied Statistics 28 (1979) 126
 */
export function pettitt(values: ArrayLike<number>): Pettitt {
  const n = values.length;
  if (n < 2) throw new RangeError(`pettitt requires at least two values, got ${n}`);
  const doubled = doubledRanks(values); // whole numbers, ties too: U stays exact
  let sum = 0;
  let best = { k: -1, u: 0, index: 0 };
  for (let i = 1; i < n; i += 1) {
    sum += doubled[i - 1]!;
    const u = sum - i * (n + 1);
    if (Math.abs(u) > best.k) best = { k: Math.abs(u), u, index: i };
  }
  const p = Math.min(1, 2 * Math.exp((-6 * best.k * best.k) / (n * n * n + n * n)));
  return { ...best, p };
}

/** Twice the mean rank of each value. */
function doubledRanks(values: ArrayLike<number>): Float64Array {
  const order = ascendingOrder(values);
  const ranks = new Float64Array(order.length);
  for (let from = 0; from < order.length; ) {
    let to = from + 1;
    while (to < order.length && values[order[to]!] === values[order[from]!]) to += 1;
    for (let k = from; k < to; k += 1) ranks[order[k]!] = from + 1 + to;
    from = to;
  }
  return ranks;
}
