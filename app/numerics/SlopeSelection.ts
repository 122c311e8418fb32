import { crossingSlopes } from "./crossingSlopes.ts";
import { SlopeOrder } from "./SlopeOrder.ts";
import { selectRanks } from "./selectRanks.ts";
import { slopePairCounts } from "./slopePairCounts.ts";
import { slopeSample } from "./slopeSample.ts";

/** Slopes strictly between two trial slopes: `below` pairs lie at or under the lower one, `upTo` under the upper one. */
type Bracket = {
  readonly low: SlopeOrder;
  readonly below: number;
  readonly high: SlopeOrder;
  readonly upTo: number;
};
type Wanted = { readonly rank: number; readonly at: number };
type Part = { readonly wanted: readonly Wanted[]; readonly bracket: Bracket };

/**
 * Order statistics of all pairwise slopes in about n log n steps. For a trial slope, sorting the points by
 * y - slope x tells how many pairs lie below it: they are the inversions. Trial slopes come from a sample of the
 * pairs still in the bracket; once a bracket holds few enough, its slopes are made and selected from. The sample
 * decides how fast an answer is found, never which.
 */
export class SlopeSelection {
  readonly #xs: Float64Array;
  readonly #ys: Float64Array;
  readonly #nextX: Uint32Array;
  readonly #pairs: number;

  /**
   * @param xs  ascending
   * @param nextX  for each position the first one with a greater x
   * @param pairs  how many pairs differ in x
   */
  constructor(xs: Float64Array, ys: Float64Array, nextX: Uint32Array, pairs: number) {
    this.#xs = xs;
    this.#ys = ys;
    this.#nextX = nextX;
    this.#pairs = pairs;
  }

  /** @param ranks  from 1 to `pairs`, in any order */
  select(ranks: readonly number[]): number[] {
    const found = ranks.map(() => Number.NaN);
    const wanted = ranks.map((rank, at) => ({ rank, at })).sort((a, b) => a.rank - b.rank);
    const bracket: Bracket = {
      low: new SlopeOrder(this.#xs, this.#ys, Number.NEGATIVE_INFINITY),
      below: 0,
      high: new SlopeOrder(this.#xs, this.#ys, Number.POSITIVE_INFINITY),
      upTo: this.#pairs,
    };
    this.#solve({ wanted, bracket }, this.#sample(bracket, 1), found);
    return found;
  }

  #solve(whole: Part, sample: Float64Array, found: number[]): void {
    let parts: Part[] = [whole];
    for (const slope of trialSlopes(whole, sample)) parts = parts.flatMap((part) => this.#split(part, slope, found));
    for (const part of parts) {
      if (part.wanted.length === 0) continue;
      const next = part.bracket !== whole.bracket && this.#isMany(part.bracket) ? this.#sample(part.bracket, 2) : none;
      if (next.length > 0) this.#solve(part, next, found);
      else this.#enumerate(part, found);
    }
  }

  /** Counts at a trial slope: ranks that are that slope are found, the others go to the part under or over it. */
  #split({ wanted, bracket }: Part, slope: number, found: number[]): Part[] {
    if (wanted.length === 0 || !(slope > bracket.low.slope && slope < bracket.high.slope)) return [{ wanted, bracket }];
    const order = new SlopeOrder(this.#xs, this.#ys, slope);
    const { less, atMost } = slopePairCounts(order, this.#nextX);
    const upTo = Math.min(bracket.upTo, Math.max(less, bracket.below));
    const below = Math.min(bracket.upTo, Math.max(atMost, bracket.below));
    for (const { rank, at } of wanted) if (rank > upTo && rank <= below) found[at] = slope;
    return [
      { wanted: wanted.filter((w) => w.rank <= upTo), bracket: { ...bracket, high: order, upTo } },
      { wanted: wanted.filter((w) => w.rank > below), bracket: { ...bracket, low: order, below } },
    ];
  }

  /** More than it takes time to count them once. */
  #isMany(bracket: Bracket): boolean {
    return bracket.upTo - bracket.below > 100_000 + 8 * this.#xs.length;
  }

  #enumerate({ wanted, bracket }: Part, found: number[]): void {
    const { low, high, below, upTo } = bracket;
    const slopes = crossingSlopes(this.#xs, this.#ys, low, high, upTo - below);
    const values = selectRanks(
      slopes,
      wanted.map((w) => w.rank - below),
    );
    for (const [k, { at }] of wanted.entries()) found[at] = values[k]!;
  }

  #sample({ low, high }: Bracket, perPoint: number): Float64Array {
    return slopeSample(this.#xs, this.#ys, low, high, Math.floor(3_000 + perPoint * this.#xs.length));
  }
}

const none = new Float64Array(0);

/**
 * Values of the sample that stand three standard errors to either side of the wanted ranks, so that those lie between
 * them but once in some hundred times. Ranks closer than that share a pair.
 */
function trialSlopes({ wanted, bracket }: Part, sample: Float64Array): number[] {
  const m = sample.length;
  const inside = bracket.upTo - bracket.below;
  const spread = 1.5 * Math.sqrt(m) + 2;
  const places = wanted.map(({ rank }) => ((rank - bracket.below - 0.5) / inside) * m);
  const ranks: number[] = [];
  for (const [k, place] of places.entries()) {
    if (k === 0 || place - places[k - 1]! > spread) ranks.push(rankNear(m, place - spread));
    if (k === places.length - 1 || places[k + 1]! - place > spread) ranks.push(rankNear(m, place + spread));
  }
  return [...new Set(selectRanks(sample, ranks))];
}

const rankNear = (m: number, place: number) => 1 + Math.max(0, Math.min(m - 1, Math.round(place)));
