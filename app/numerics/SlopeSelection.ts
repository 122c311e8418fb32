import { crossingSlopes } from "./crossingSlopes.ts";
import { SlopeOrder } from "./SlopeOrder.ts";
import { selectInPlace } from "./selectInPlace.ts";
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
    this.#solve({ wanted, bracket }, this.#sample(bracket), found);
    return found;
  }

  /** Ranks far apart in the sample go their own ways; near ones share a bracket. */
  #solve({ wanted, bracket }: Part, sample: Float64Array, found: number[]): void {
    const perRank = sample.length / (bracket.upTo - bracket.below);
    for (let from = 0, to = 1; from < wanted.length; from = to, to = from + 1) {
      while (to < wanted.length && (wanted[to]!.rank - wanted[to - 1]!.rank) * perRank < 2 * Math.sqrt(sample.length))
        to += 1;
      for (const part of this.#narrowed({ wanted: wanted.slice(from, to), bracket }, sample, found)) {
        if (part.wanted.length === 0) continue;
        const next = this.#isMany(part.bracket) && part.bracket !== bracket ? this.#sample(part.bracket) : none;
        if (next.length > 0) this.#solve(part, next, found);
        else this.#enumerate(part, found);
      }
    }
  }

  /**
   * A first trial slope where the sample puts the middle of the wanted ranks. Its count tells how far off each of them
   * is, and a second one just past the farthest closes the bracket from the other side: it need only allow for the
   * sample's error over that short way.
   */
  #narrowed(part: Part, sample: Float64Array, found: number[]): Part[] {
    const { low, below, high, upTo } = part.bracket;
    const perRank = sample.length / (upTo - below);
    const first = part.wanted[0]!.rank;
    const last = part.wanted[part.wanted.length - 1]!.rank;
    const middle = Math.round(((first + last) / 2 - below) * perRank);
    return this.#split(part, valueAt(sample, middle), found).flatMap((half) => {
      if (half.wanted.length === 0) return [];
      const isUnder = half.bracket.low === low && half.bracket.high !== high;
      const away = isUnder ? half.bracket.upTo - half.wanted[0]!.rank : half.wanted.at(-1)!.rank - half.bracket.below;
      const expected = Math.max(0, away) * perRank;
      const past = Math.ceil(expected + 3 * Math.sqrt(expected) + 3);
      return this.#split(half, valueAt(sample, isUnder ? middle - past : middle + past), found);
    });
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

  /** More than are made as fast as a bracket is narrowed. */
  #isMany(bracket: Bracket): boolean {
    return bracket.upTo - bracket.below > 50_000 + 5 * this.#xs.length;
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

  #sample({ low, high }: Bracket): Float64Array {
    return slopeSample(this.#xs, this.#ys, low, high, 3_000 + Math.floor(this.#xs.length / 3));
  }
}

const none = new Float64Array(0);

function valueAt(sample: Float64Array, place: number): number {
  return selectInPlace(sample, Math.max(0, Math.min(sample.length - 1, place)));
}
