import type { ReadingState } from "../gauge/ReadingSink.ts";
import type { Rest } from "./Cycle.ts";
import type { LiveState } from "./LiveState.ts";
import type { EmitCycle } from "./phase/CycleDesk.ts";
import { FALL, REST, SEEK, UP } from "./phase/PhaseGround.ts";
import { Phases } from "./phase/Phases.ts";
import { StampClock } from "./phase/StampClock.ts";
import type { ZeroOutcome } from "./phase/steadyZero.ts";
import type { Trace } from "./phase/Trace.ts";

export type DetectorOptions = {
  /** Readings a second; absent: the stamps', else unknown, and times are undefined. */
  readonly rateHz?: number | undefined;
  /** Of the gauge; tells knocks from small forces, and clipped readings. */
  readonly capacityN?: number | undefined;
  /** One step of the last digit; absent: the least difference between readings. */
  readonly resolutionN?: number | undefined;
};

/** Held readings among live ones say nothing new; past so many without a live one they are all there is. */
const heldAmongLive = 16;

/**
 * Turns readings into clampings, one reading in, completed cycles out (design: a cycle starts when the net force
 * leaves the zero band for longer than a knock, and ends when it comes back, or falls by half and stays there).
 *
 * The zero band follows the rest: median and robust scatter of its last four seconds. Out of the band, blocks of 50 ms
 * give the level that the fall is measured against; the readings are kept and read as a whole when the force has come
 * down. A cycle is handed out when the rest after it has lasted a second, or with the next cycle, a gap or the end:
 * only then is it known whether it was released. Memory is bounded by `traceLimit`: rest is forgotten from its
 * beginning, a long hold past its settled window.
 *
 * A stream without rest, rise or fall (constant, all overload, all rejected, one reading) has no cycle. One that
 * begins inside a hold has a cycle marked `cut` once it came down to a rest. Stamps that repeat, run backwards or leap
 * are `StampClock`'s matter. A reading that is not finite counts as rejected.
 */
export class CycleDetector {
  readonly #phases: Phases;
  readonly #stamps = new StampClock();
  #stamping = false;
  #overloaded = false;
  #heldNow = false;
  #sinceLive = 1 << 20; // places since the last live reading, counted where held ones come

  /** @throws RangeError  an option is given and not above 0 */
  constructor(options: DetectorOptions, emit: EmitCycle) {
    for (const [name, value] of Object.entries(options)) {
      if (value !== undefined && !(value > 0 && Number.isFinite(value)))
        throw new RangeError(`CycleDetector requires ${name} above 0, got ${value}`);
    }
    this.#phases = new Phases(options.rateHz, options.capacityN, emit);
    if (options.resolutionN !== undefined) this.resolution(options.resolutionN);
  }

  /** One step of the last digit from here on: the decoder knows it when the first line has come, and when it changes. */
  resolution(stepN: number): void {
    if (stepN > 0 && Number.isFinite(stepN)) this.#phases.band.giveStep(stepN);
  }

  /**
   * The next reading.
   * @param stampS  the gauge's own stamp in seconds as it was sent, NaN when it sends none; times count from the first
   */
  push(forceN: number, state: ReadingState, stampS: number): void {
    // Gauges without stamps are the fast ones; they are not asked for more than one comparison.
    const at = this.#stamping || !Number.isNaN(stampS) ? this.#timeOf(stampS) : stampS;
    if (state !== "live" || !Number.isFinite(forceN)) {
      this.#unusual(forceN, state, at);
      return;
    }
    const phases = this.#phases;
    phases.trace.append(forceN, at);
    this.#sinceLive = 0;
    // The way of nearly every reading: at rest, inside the band.
    if (phases.phase === REST && forceN >= phases.band.lowN && forceN <= phases.band.highN) {
      phases.band.due -= 1;
      if (phases.band.due <= 0) phases.lookAtRest();
      return;
    }
    this.#overloaded = false;
    this.#heldNow = false;
    phases.take();
  }

  /** A line that could not be read keeps its place in time. */
  rejected(): void {
    this.#stamps.miss();
    this.#place(Number.NaN, this.#stamps.lastS);
  }

  /** The link was lost: what was in work is cut here, and nothing after it belongs to it. */
  gap(): void {
    this.#phases.cut();
    this.#stamps.break();
  }

  /** The stream has ended; a hold in work is handed out as cut. */
  end(): void {
    this.gap();
  }

  /** Time of the latest place: by stamp, else by rate; undefined when neither is known. */
  get lastS(): number | undefined {
    const { trace } = this.#phases;
    const s = this.#stamps.lastS;
    if (!Number.isNaN(s)) return s;
    return trace.rateHz === undefined ? undefined : (trace.placeOf(trace.length) - 1) / trace.rateHz;
  }

  /** Readings a second: as given, else by the stamps; undefined when unknown. */
  get rateHz(): number | undefined {
    return this.#stamps.rateHz ?? this.#phases.trace.rateHz;
  }

  /** The rest in progress as far as it has lasted; undefined when the force is not at a true rest. */
  get restNow(): Rest | undefined {
    return this.#phases.restNow;
  }

  /**
   * Takes the last second of readings as the zero, when it is one of rest. Refused where the force moves, presses or is
   * hidden; the zero that stood stays then.
   */
  takeZero(): ZeroOutcome {
    if (this.#overloaded) return { kind: "refused", reason: "overload" };
    if (this.#heldNow) return { kind: "refused", reason: "held" };
    return this.#phases.takeZero();
  }

  get live(): LiveState {
    const { phase, trace, out, band, pace } = this.#phases;
    const zeroN = phase === SEEK ? undefined : band.trueN;
    const indicationN = this.#overloaded ? undefined : latestReading(trace);
    const greatest = this.#phases.greatestN;
    const holding = phase === UP && trace.length - out.onset > 2 * pace.quiet && this.#phases.isQuiet();
    const holdingS = holding ? trace.secondsBetween(out.onset, trace.length - 1) : Number.NaN;
    return {
      word: this.#word(holding),
      forceN: indicationN === undefined || zeroN === undefined ? undefined : indicationN - zeroN,
      indicationN,
      zeroN,
      greatestN: greatest === undefined || zeroN === undefined ? undefined : greatest - zeroN,
      holdingS: Number.isNaN(holdingS) ? undefined : holdingS,
      places: trace.placeOf(trace.length),
      cycleFromIndex: phase === UP || phase === FALL ? trace.placeOf(out.onset) : undefined,
    };
  }

  #word(holding: boolean): LiveState["word"] {
    if (this.#overloaded) return "overload";
    if (this.#heldNow) return "held";
    const { phase } = this.#phases;
    if (phase === SEEK) return "none";
    if (phase === REST) return "atRest";
    if (phase === UP) return holding ? "holding" : "rising";
    return "falling";
  }

  #timeOf(stampS: number): number {
    this.#stamping = true;
    if (Number.isNaN(stampS)) this.#stamps.miss();
    else if (this.#stamps.take(stampS)) this.gap();
    return this.#stamps.lastS;
  }

  #unusual(forceN: number, state: ReadingState, tS: number): void {
    this.#overloaded = state === "overload";
    this.#heldNow = state === "held";
    this.#sinceLive += 1;
    if (state === "overload") this.#place(Number.POSITIVE_INFINITY, tS);
    else if (!Number.isFinite(forceN) || this.#sinceLive <= heldAmongLive) this.#place(Number.NaN, tS);
    else {
      this.#phases.trace.append(forceN, tS);
      this.#phases.trace.markHeld();
      this.#phases.take();
    }
  }

  #place(value: number, tS: number): void {
    this.#phases.trace.append(value, tS);
    this.#phases.take();
  }
}

/** Not kept beside the trace: a number in a member is a new object each time it is set. */
function latestReading(trace: Trace): number | undefined {
  for (let i = trace.length - 1; i >= 0 && i > trace.length - 64; i -= 1) {
    const v = trace.values[i]!;
    if (Number.isFinite(v)) return v;
  }
  return undefined;
}
