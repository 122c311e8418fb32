import type { Contribution } from "./Budget.ts";
import type { Spread } from "./Spread.ts";

/** What of a budget's line bends the shape of the sum. */
export type SpreadLine = Pick<Contribution, "distribution" | "standardN" | "degreesOfFreedom">;

/**
 * The spread of a budget's sum, as JCGM 101 assigns distributions: t scaled by its standard uncertainty where few
 * readings are behind a line, rectangles and triangles, bells. Of the t and of the rectangles the two that matter most
 * keep their shape; everything else is summed by its second and fourth cumulants.
 * @param contributions  independent; at least one above zero
 * @see JCGM 101:2008 6.4.2, 6.4.5, 6.4.7, 6.4.9
 */
export function spreadOf(contributions: readonly SpreadLine[]): Spread {
  let variance = 0;
  for (const { standardN } of contributions) variance += standardN * standardN;
  const departure = (c: SpreadLine) => departureFromBell(c.standardN ** 2 / variance, c.degreesOfFreedom);
  const few = contributions
    .filter((c) => c.distribution === "t" && departure(c) > FIRST)
    .toSorted((a, b) => departure(b) - departure(a))
    .filter((c, i) => i === 0 || (i === 1 && departure(c) > SECOND));
  const wide = contributions
    .filter((c) => c.distribution === "rectangular")
    .toSorted((a, b) => b.standardN - a.standardN)
    .slice(0, 2)
    .filter((c, i) => c.standardN ** 2 > (i === 0 ? WIDEST : NEXT) * variance);
  let restVarianceN2 = 0;
  let restCumulantN4 = 0;
  for (const c of contributions) {
    if (few.includes(c) || wide.includes(c)) continue;
    const [second, fourth] = cumulants(c);
    restVarianceN2 += second;
    restCumulantN4 += fourth;
  }
  return {
    ts: few.map((c) => ({ scaleN: c.standardN, degreesOfFreedom: c.degreesOfFreedom })),
    rectanglesN: wide.map((c) => c.standardN * Math.sqrt(3)),
    restVarianceN2,
    restCumulantN4,
  };
}

/** Shares of the variance from which the widest rectangle keeps its shape, and the next one; narrower ones hardly bend the sum. */
const WIDEST = 0.05;
const NEXT = 0.12;

/** From which departure a t keeps its shape, and from which a second one is worth its time. */
const FIRST = 0.001;
const SECOND = 0.03;

/**
 * How much a t with a share of the variance bends the sum: its share of the fourth cumulant. Up to four degrees of
 * freedom there is none, and even a narrow t reaches far.
 */
function departureFromBell(share: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom > 4.5) return (6 * share * share) / (degreesOfFreedom - 4);
  return share > 1e-7 ? 1 + share : 0;
}

/** Variance and fourth cumulant of one line. A t of four degrees of freedom or fewer has no fourth: it is taken at five, as a bell. */
function cumulants({ distribution, standardN, degreesOfFreedom }: SpreadLine): readonly [number, number] {
  const square = standardN * standardN;
  if (distribution === "rectangular") return [square, -1.2 * square * square];
  if (distribution === "triangular") return [square, -0.6 * square * square];
  if (distribution === "normal" || degreesOfFreedom === Infinity) return [square, 0];
  const variance = (square * Math.max(5, degreesOfFreedom)) / (Math.max(5, degreesOfFreedom) - 2);
  return [variance, degreesOfFreedom > 4.5 ? (6 / (degreesOfFreedom - 4)) * variance * variance : 0];
}
