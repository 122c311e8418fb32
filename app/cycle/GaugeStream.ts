import { type LineCounts, LineDecoder } from "../gauge/LineDecoder.ts";
import type { LinePattern } from "../gauge/linePattern.ts";
import type { ReadingSink, ReadingState, RejectReason } from "../gauge/ReadingSink.ts";
import type { ForceUnit } from "../quantity/forceUnits.ts";
import type { Cycle, Rest, Waveform } from "./Cycle.ts";
import { CycleDetector } from "./CycleDetector.ts";
import type { LiveState } from "./LiveState.ts";
import type { ZeroOutcome } from "./phase/steadyZero.ts";

export type GaugeStreamOptions = {
  readonly pattern: LinePattern;
  /** Readings a second where the gauge sends no time of its own. */
  readonly rateHz?: number | undefined;
  readonly capacityN?: number | undefined;
};

/** The readings one chunk brought, lent until the call returns. A place without a reading is NaN, overload Infinity. */
export type ReadingBatch = {
  /** Place of the first one in the stream. */
  readonly fromIndex: number;
  readonly n: number;
  /** Indications, newtons; the first `n` count. */
  readonly forcesN: Float64Array;
  /** Seconds from the stream's first line; NaN where unknown. */
  readonly timesS: Float64Array;
};

/** Where a stream's findings go; only cycles must be wanted. */
export type GaugeStreamSink = {
  cycle(cycle: Cycle, waveform: Waveform): void;
  /** At the end of a `push` that brought any. */
  readings?(batch: ReadingBatch): void;
  /** `fromIndex`: the first reading in it. */
  unit?(unit: ForceUnit, fromIndex: number): void;
  rejected?(reason: RejectReason): void;
  aside?(what: "echo" | "status"): void;
  notice?(notice: "lowBattery" | "moving" | "stable" | "underload"): void;
};

/**
 * Bytes of a gauge in, readings and cycles out: the one way from bytes to cycles, for the live screen, a docked memory,
 * a replayed spool, a file and the command line. Any chunking of the same bytes gives the same cycles, to the bit.
 */
export class GaugeStream {
  readonly #decoder: LineDecoder;
  readonly #detector: CycleDetector;
  readonly #sink: GaugeStreamSink;
  readonly #lines: ReadingSink;
  #forcesN = new Float64Array(64);
  #timesS = new Float64Array(64);
  #n = 0;
  #places = 0;
  #resolutionN: number | undefined;

  /** @throws RangeError  the pattern's numbers come bare and it does not say in which unit; rate or capacity not above 0 */
  constructor(options: GaugeStreamOptions, sink: GaugeStreamSink) {
    this.#decoder = new LineDecoder(options.pattern);
    const { rateHz = options.pattern.rateHz, capacityN } = options;
    this.#detector = new CycleDetector({ rateHz, capacityN }, (cycle, waveform) => sink.cycle(cycle, waveform));
    this.#sink = sink;
    this.#lines = {
      reading: (forceN, state, stampS) => this.#reading(forceN, state, stampS),
      rejected: (reason) => this.#rejected(reason),
      unit: (unit) => sink.unit?.(unit, this.#places),
      aside: (what) => sink.aside?.(what),
      notice: (notice) => sink.notice?.(notice),
    };
  }

  push(chunk: Uint8Array): void {
    this.#decoder.push(chunk, this.#lines);
    this.#handOut();
  }

  /** The link was lost, or bytes were: the line and the cycle in work are cut here. */
  gap(): void {
    this.#decoder.gap();
    this.#detector.gap();
  }

  /**
   * The stream has ended, as a file does.
   * @returns  the rest it ended in, for `applyZeros`
   */
  end(): Rest | undefined {
    this.#decoder.end(this.#lines);
    this.#handOut();
    const closing = this.#detector.restNow;
    this.#detector.end();
    return closing;
  }

  /** The rest in progress, for `applyZeros`. */
  get restNow(): Rest | undefined {
    return this.#detector.restNow;
  }

  /** See `CycleDetector.takeZero`. */
  takeZero(): ZeroOutcome {
    return this.#detector.takeZero();
  }

  get live(): LiveState {
    return this.#detector.live;
  }

  /** The step of the last digit the gauge sends, newtons; undefined before the first reading. */
  get resolutionN(): number | undefined {
    return this.#resolutionN;
  }

  get counts(): LineCounts {
    return this.#decoder.counts;
  }

  /** Readings a second by the gauge's stamps, else as given; undefined when unknown. */
  get rateHz(): number | undefined {
    return this.#detector.rateHz;
  }

  #reading(forceN: number, state: ReadingState, stampS: number): void {
    const resolutionN = this.#decoder.resolutionN;
    if (resolutionN !== this.#resolutionN && resolutionN !== undefined) {
      this.#resolutionN = resolutionN;
      this.#detector.resolution(resolutionN);
    }
    this.#detector.push(forceN, state, stampS);
    this.#places += 1;
    if (this.#sink.readings !== undefined) this.#note(state === "overload" ? Number.POSITIVE_INFINITY : forceN);
  }

  #rejected(reason: RejectReason): void {
    this.#detector.rejected();
    this.#places += 1;
    if (this.#sink.readings !== undefined) this.#note(Number.NaN);
    this.#sink.rejected?.(reason);
  }

  #note(forceN: number): void {
    if (this.#n === this.#forcesN.length) this.#grow();
    this.#forcesN[this.#n] = forceN;
    this.#timesS[this.#n] = this.#detector.lastS ?? Number.NaN;
    this.#n += 1;
  }

  #grow(): void {
    const forces = new Float64Array(2 * this.#n);
    forces.set(this.#forcesN);
    this.#forcesN = forces;
    const times = new Float64Array(2 * this.#n);
    times.set(this.#timesS);
    this.#timesS = times;
  }

  #handOut(): void {
    if (this.#n === 0) return;
    const batch = { fromIndex: this.#places - this.#n, n: this.#n, forcesN: this.#forcesN, timesS: this.#timesS };
    this.#n = 0;
    this.#sink.readings?.(batch);
  }
}
