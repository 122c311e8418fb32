import { median } from "../../app/numerics/median.ts";

/** Stretch of a stream from which its clock is told. */
const WINDOW_S = 60;
/** Fewer seconds than this tell no rate. */
const LEAST = 10;
/** A stream's rate is known better than this; what shows more is a burst. */
const MOST_SLOPE = 0.2;

/**
 * How a stream's own time stands to the host's: of each second the quickest delivery, and a straight line along them. Bursts
 * only come late, so they do no harm; a rate that is not quite the one assumed shows as the line's slope.
 */
export class HostClock {
  #least: { readonly second: number; delayS: number }[] = [];
  #line: { readonly fromS: number; readonly delayS: number; readonly slope: number } | undefined;

  note(ownS: number, arrivedS: number): void {
    const second = Math.floor(ownS);
    const delayS = arrivedS - ownS;
    const last = this.#least.at(-1);
    if (last?.second === second) {
      if (delayS >= last.delayS) return;
      last.delayS = delayS;
    } else this.#least.push({ second, delayS });
    while (this.#least[0]!.second < second - WINDOW_S) this.#least.shift();
    this.#line = undefined;
  }

  /** Host's time of a moment of the stream; NaN before anything was noted. */
  hostS(ownS: number): number {
    this.#line ??= lineThrough(this.#least);
    const { fromS, delayS, slope } = this.#line;
    return ownS + delayS + slope * (ownS - fromS);
  }
}

function lineThrough(points: readonly { readonly second: number; readonly delayS: number }[]) {
  const fromS = points[0]?.second ?? 0;
  const half = Math.floor(points.length / 2);
  // Slopes over half the window each: their median is not moved by single late seconds.
  const slopes = points.slice(half).map((p, i) => (p.delayS - points[i]!.delayS) / (p.second - points[i]!.second));
  const found = points.length < LEAST ? 0 : median(slopes);
  const slope = Math.abs(found) > MOST_SLOPE ? 0 : found;
  const delayS = Math.min(...points.map((p) => p.delayS - slope * (p.second - fromS)));
  return { fromS, delayS: points.length === 0 ? Number.NaN : delayS, slope };
}
