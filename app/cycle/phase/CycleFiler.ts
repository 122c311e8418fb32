import { buildCycle, inOrder } from "../buildCycle.ts";
import { type CycleFound, readCycle, type Stretch } from "../read/readCycle.ts";
import type { RestFound } from "../read/restOf.ts";
import { CycleDesk, type EmitCycle } from "./CycleDesk.ts";
import type { Excursion } from "./Excursion.ts";
import type { Trace } from "./Trace.ts";
import { waveformOf } from "./waveformOf.ts";
import type { ZeroBand } from "./ZeroBand.ts";

/** Residuals of rests that are kept. */
const noiseKept = 1024;

/** Reads finished stretches as clampings and puts them on the desk. */
export class CycleFiler {
  readonly desk: CycleDesk;
  readonly #trace: Trace;
  readonly #band: ZeroBand;
  readonly #out: Excursion;
  readonly #capacityN: number | undefined;
  #restNoise: Float64Array[] = [];
  #largestN = 0; // greatest level of a cycle so far

  constructor(trace: Trace, band: ZeroBand, out: Excursion, capacityN: number | undefined, emit: EmitCycle) {
    this.desk = new CycleDesk(emit);
    this.#trace = trace;
    this.#band = band;
    this.#out = out;
    this.#capacityN = capacityN;
  }

  /** Net force under which nothing is taken for a clamping. */
  get leastN(): number {
    const { sigmaN, stepN } = this.#band;
    if (this.#capacityN !== undefined) return Math.max(0.04 * this.#capacityN, 8 * sigmaN, 3 * stepN);
    return Math.max(12 * sigmaN, 8 * stepN, 0.04 * this.#largestN);
  }

  stretch(fellToN: number | undefined, before: RestFound | undefined, end = this.#trace.length): Stretch {
    return {
      trace: this.#trace,
      onset: this.#out.onset,
      end,
      zeroN: this.#band.trueN,
      baseN: this.#out.baseN,
      sigmaN: this.#band.sigmaN,
      stepN: this.#band.stepN,
      restNoise: this.#restNoise,
      restMemory: before?.memory ?? 1,
      fellToN,
      capacityN: this.#capacityN,
      leastN: this.leastN,
      foldedPeakN: this.#out.foldedPeakN,
      foldedFlags: this.#out.foldedFlags,
    };
  }

  /**
   * Reads the stretch in work.
   * @param fellToN  where it came down to; undefined when it was cut off in the hold
   * @param hasRest  false when no rest lies before it
   * @param begun  the stream began inside it
   * @param end  one past its last reading, when later ones have come
   * @returns  net level of the cycle put on the desk; undefined when there was none
   */
  file(fellToN: number | undefined, hasRest: boolean, begun: boolean, end?: number): number | undefined {
    const { topN } = this.#out;
    if (!begun && !this.#out.overloaded && topN - this.#band.trueN < 0.5 * this.leastN) return undefined;
    const before = hasRest ? this.#restBefore() : undefined;
    if (before !== undefined) this.#keepNoise(before.noise);
    const found = readCycle(this.stretch(fellToN, before, end));
    if (found === undefined) return undefined;
    this.#put(found, before, hasRest || begun, fellToN === undefined || (begun && found.start <= 1));
    return found.levelN;
  }

  /** The waiting cycle has its rest. */
  complete(strained: boolean): void {
    if (!this.desk.waiting) return;
    this.desk.release(this.#band.restUpTo(this.#trace, this.#trace.length)?.rest, strained);
  }

  /** The latest rests, as far as they are few readings: together they show how long the noise remembers. */
  #keepNoise(noise: Float64Array): void {
    this.#restNoise.push(noise);
    let kept = this.#restNoise.reduce((n, r) => n + r.length, 0);
    while (kept > noiseKept && this.#restNoise.length > 1) kept -= this.#restNoise.shift()!.length;
  }

  #restBefore(): RestFound | undefined {
    const guard = Math.max(2, Math.round((this.#trace.rateHz ?? 20) * 0.03));
    return this.#band.restUpTo(this.#trace, Math.max(this.#band.from, this.#out.onset - guard));
  }

  #put(found: CycleFound, before: RestFound | undefined, hasRest: boolean, cut: boolean): void {
    const band = this.#band;
    const trueRest = before !== undefined && !band.strained ? before.rest : undefined;
    this.desk.release(before?.rest, hasRest ? band.strained : this.desk.waiting);
    const zero = trueRest ?? { indicationN: band.trueN, standardN: band.sigmaN / 4 };
    const cycle = buildCycle(found, this.#trace, zero, before?.rest);
    const flags = cut ? inOrder(new Set([...found.flags, "cut" as const])) : cycle.flags;
    // A maximum that was cleared comes back a little higher with each try of the noise.
    const share = found.flags.has("peakHold") ? 0.03 : 0.01;
    const residualN = Math.max(share * found.levelN, 2 * band.sigmaN, 2 * band.stepN);
    const from = Math.max(band.from, found.start - Math.max(8, Math.round((this.#trace.rateHz ?? 20) * 0.5)));
    const waveform = waveformOf(
      this.#trace,
      Math.max(0, Math.min(from, found.start)),
      Math.min(this.#trace.length, found.end + 2),
    );
    this.desk.put({ ...cycle, zeroBeforeN: trueRest?.indicationN, flags }, waveform, residualN);
    this.#largestN = Math.max(this.#largestN, found.levelN);
    band.reset = false;
  }
}
