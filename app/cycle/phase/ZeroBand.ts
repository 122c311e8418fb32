import { type RestFound, restOf } from "../read/restOf.ts";
import { leastStep, stretchMedian, stretchScale } from "../read/stretch.ts";
import type { Pace } from "./Pace.ts";
import type { Trace } from "./Trace.ts";

const earlier = 30;

/**
 * The band of indications that count as rest. It follows the rest slowly, so that drift stays in it and a clamping by
 * hand does not. A rest left strained by a release that was none has a band too, but is no zero.
 */
export class ZeroBand {
  lowN = 0;
  highN = 0;
  centreN = 0;
  /** Scatter at rest; known from the first rest on. */
  sigmaN = 0;
  stepN = 0;
  strained = false;
  /** The last level that was a true zero. */
  trueN = 0;
  /** Index in the trace where this rest begins. */
  from = 0;
  /** Readings until the next look. */
  due = 0;
  /** The zero was set anew since the last cycle. */
  reset = false;
  #sincePlace = 0;
  #sinceS: number | undefined;
  #stepGiven = false;

  /** The resolution as the decoder knows it. */
  giveStep(stepN: number): void {
    this.stepN = stepN;
    this.#stepGiven = true;
  }

  /** A new rest begins at index `from` of the trace. */
  begin(trace: Trace, from: number, centreN: number, strained: boolean, pace: Pace): void {
    this.from = from;
    this.strained = strained;
    this.#sincePlace = trace.placeOf(from);
    this.#sinceS = trace.timeOf(from);
    this.due = pace.look;
    this.#learn(trace, from, trace.length);
    this.#centre(centreN);
  }

  /** Looks at the last seconds of the rest. Costs a few microseconds, four times a second. */
  refresh(trace: Trace, pace: Pace): void {
    this.due = pace.look;
    const from = Math.max(this.from, trace.length - pace.follow);
    if (trace.length - from < pace.quiet) return;
    this.#learn(trace, from, trace.length);
    const centre = stretchMedian(trace.values, from, trace.length);
    if (!Number.isNaN(centre)) this.#centre(centre);
    const excess = trace.length - pace.keep;
    if (excess < pace.keep >> 1) return;
    trace.dropHead(excess);
    this.from = Math.max(0, this.from - excess);
  }

  get halfWidthN(): number {
    return this.highN - this.centreN;
  }

  /** Places since this rest began. */
  rested(trace: Trace): number {
    return trace.placeOf(trace.length) - this.#sincePlace;
  }

  /** The rest up to index `to`, less what a release before it leaves in its beginning. */
  restUpTo(trace: Trace, to: number): RestFound | undefined {
    const afterRelease =
      this.#sincePlace > 0 ? Math.min(Math.ceil((trace.rateHz ?? 20) * 0.7), (to - this.from) >> 2) : 0;
    const last = Math.max(this.from, to - 1);
    const end = trace.timeOf(last);
    const restedS = end === undefined || this.#sinceS === undefined ? undefined : end - this.#sinceS;
    const found = restOf(trace, this.from + afterRelease, to, this.centreN, this.halfWidthN, this.stepN, restedS);
    return found === undefined || !this.reset ? found : { ...found, rest: { ...found.rest, reset: true } };
  }

  #learn(trace: Trace, from: number, to: number): void {
    if (!this.#stepGiven) {
      const step = leastStep(trace.values, from, to);
      this.stepN = this.stepN > 0 && step > 0 ? Math.min(this.stepN, step) : Math.max(this.stepN, step);
    }
    const scale = stretchScale(trace.values, from, to, this.stepN);
    if (scale !== undefined) this.sigmaN = this.#weighed(scale.sigma, scale.n);
  }

  /** Few readings know little of their scatter: what earlier rests showed counts like thirty; the first few are doubted. */
  #weighed(sigma: number, n: number): number {
    if (!(this.sigmaN > 0)) return sigma * (1 + 6 / n);
    return Math.sqrt((n * sigma ** 2 + earlier * this.sigmaN ** 2) / (n + earlier));
  }

  #centre(centreN: number): void {
    this.centreN = centreN;
    if (!this.strained) this.trueN = centreN;
    // The last term is for streams without noise or steps, whose figures differ in their last bits.
    const half = Math.max(6 * this.sigmaN, 1.6 * this.stepN, 1e-9 * Math.abs(centreN), 1e-9);
    this.lowN = centreN - half;
    this.highN = centreN + half;
  }
}
