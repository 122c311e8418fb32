import type { Contribution } from "./Budget.ts";
import type { Spread } from "./Spread.ts";

/**
 * The spread of a budget's sum, as JCGM 101 assigns distributions: t scaled by its standard uncertainty where few
 * readings are behind a line, rectangles and triangles, bells. The t with the fewest degrees of freedom and the two
 * widest rectangles keep their shape; everything else is summed by its second and fourth cumulants.
 * @param contributions  independent; at least one above zero
 * @see JCGM 101:2008 6.4.2, 6.4.5, 6.4.7, 6.4.9
 */
export function spreadOf(contributions: readonly Contribution[]): Spread {
  let variance = 0;
  for (const { standardN } of contributions) variance += standardN * standardN;
  const few = contributions.filter((c) => c.distribution === "t" && c.degreesOfFreedom < Infinity);
  const heaviest = few.toSorted((a, b) => a.degreesOfFreedom - b.degreesOfFreedom)[0];
  const wide = contributions
    .filter((c) => c.distribution === "rectangular" && c.standardN ** 2 > 0.02 * variance)
    .toSorted((a, b) => b.standardN - a.standardN)
    .slice(0, 2);
  let restVarianceN2 = 0;
  let restCumulantN4 = 0;
  for (const c of contributions) {
    if (c === heaviest || wide.includes(c)) continue;
    const [second, fourth] = cumulants(c);
    restVarianceN2 += second;
    restCumulantN4 += fourth;
  }
  return {
    t: heaviest && { scaleN: heaviest.standardN, degreesOfFreedom: heaviest.degreesOfFreedom },
    rectanglesN: wide.map((c) => c.standardN * Math.sqrt(3)),
    restVarianceN2,
    restCumulantN4,
  };
}

/** Variance and fourth cumulant of one line. A t of four degrees of freedom or fewer has no fourth: it is taken at five, as a bell. */
function cumulants({ distribution, standardN, degreesOfFreedom }: Contribution): readonly [number, number] {
  const square = standardN * standardN;
  if (distribution === "rectangular") return [square, -1.2 * square * square];
  if (distribution === "triangular") return [square, -0.6 * square * square];
  if (distribution === "normal" || degreesOfFreedom === Infinity) return [square, 0];
  const variance = (square * Math.max(5, degreesOfFreedom)) / (Math.max(5, degreesOfFreedom) - 2);
  return [variance, degreesOfFreedom > 4.5 ? (6 / (degreesOfFreedom - 4)) * variance * variance : 0];
}
