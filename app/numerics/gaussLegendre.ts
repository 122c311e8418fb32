/**
 * Nodes and weights of Gauss-Legendre integration: sum of weights times f(nodes) is the integral of f from `from`
 * to `to`, exact for polynomials up to degree 2n - 1.
 * @param n  number of nodes, 1 and more
 * @returns  nodes from the upper end down
 * @throws RangeError  no node
 * @see Abramowitz and Stegun 25.4.29; nodes by Newton's method on the Legendre recurrence, 22.7.10
 */
export function gaussLegendre(n: number, from: number, to: number): { nodes: number[]; weights: number[] } {
  if (!(n >= 1)) throw new RangeError(`gaussLegendre requires at least one node, got ${n}`);
  const half = (to - from) / 2;
  const middle = (to + from) / 2;
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let i = 0; i < n; i += 1) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 20; step += 1) {
      const { value, before } = legendre(n, x);
      slope = (n * (x * value - before)) / (x * x - 1);
      const move = value / slope;
      x -= move;
      if (Math.abs(move) < 1e-15) break;
    }
    nodes.push(middle + half * x);
    weights.push((2 * half) / ((1 - x * x) * slope * slope));
  }
  return { nodes, weights };
}

/** P_n and P_(n - 1) at x. */
function legendre(n: number, x: number): { value: number; before: number } {
  let before = 1;
  let value = x;
  for (let k = 2; k <= n; k += 1) [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
  return { value, before };
}
