import { stretchMedian } from "../read/stretch.ts";
import { foldHold } from "./foldHold.ts";
import { FALL, PhaseGround, REST, SEEK, SINK, UP } from "./PhaseGround.ts";
import { traceLimit } from "./Trace.ts";

/** Where the force stands, reading after reading. The reading is in the trace already when `take` hears of it. */
export class Phases extends PhaseGround {
  #rested = false; // a rest lies before the stretch in work
  /** The latest reading of the trace. Functions fetch it themselves: a number handed over would be boxed each time. */
  take(): void {
    if (this.phase === UP) this.#up();
    else if (this.phase === REST) this.#rest();
    else if (this.phase === FALL) this.#fall();
    else if (this.phase === SINK) this.#sink();
    else this.#seek();
  }

  /** Cuts what is in work and forgets what is known. */
  cut(): void {
    // In the first rest after a gap this may still be the hold that the gap cut.
    if (this.phase === UP) this.lostLevelN = this.filer.file(undefined, this.#rested, false);
    else if (this.phase === FALL) this.filer.file(this.out.leastN, this.#rested, false);
    else if (this.phase === REST) this.filer.complete(this.band.strained);
    this.filer.desk.release(undefined, false);
    this.trace.dropHead(this.trace.length);
    this.out.begin(0, 0, 0);
    this.phase = SEEK;
    this.initial = true;
  }

  #seek(): void {
    const { trace, out } = this;
    if (trace.length - out.blockFrom < this.pace.quiet >> 1) return;
    out.blockFrom = trace.length;
    this.setPace();
    const level = this.quietNow(0);
    if (level !== undefined) {
      this.beginRest(level, false);
      return;
    }
    if (trace.length < traceLimit) return;
    trace.dropHead(traceLimit >> 1);
    out.blockFrom = trace.length;
  }

  #rest(): void {
    const value = this.trace.values[this.trace.length - 1]!;
    const { band } = this;
    if (value > band.highN) this.#beginUp(this.trace.length - 1);
    else if (value < band.lowN) {
      this.out.begin(this.trace.length - 1, band.centreN, band.highN);
      this.phase = SINK;
    } else {
      band.due -= 1;
      if (band.due <= 0) this.lookAtRest();
    }
  }

  #beginUp(onset: number): void {
    this.out.begin(onset, this.band.centreN, this.band.highN);
    this.#rested = true;
    this.phase = UP;
    this.#up();
  }

  #up(): void {
    const value = this.trace.values[this.trace.length - 1]!;
    const { out, pace } = this;
    if (value <= out.returnN) {
      out.inside += 1;
      if (out.inside >= pace.stay) {
        this.#close(out.returnN - this.band.halfWidthN);
        return;
      }
    } else if (!Number.isNaN(value)) out.inside = 0;
    if (value === Number.POSITIVE_INFINITY) out.overloaded = true;
    if (value < out.fallN) {
      out.below += 1;
      if (out.below >= pace.stay) {
        out.beginFall();
        this.phase = FALL;
        return;
      }
    } else if (!Number.isNaN(value)) out.below = 0;
    if (out.blockDone(this.trace, pace)) this.#endBlock();
  }

  /** At or under this a clamping has come back to the true zero. */
  get #homeN(): number {
    const { band } = this;
    return band.strained ? band.trueN + band.halfWidthN : band.highN;
  }

  #endBlock(): void {
    const { out, trace, band } = this;
    const leastN = this.filer.leastN;
    out.endBlock(trace, band.trueN, leastN);
    // A clamping out of a strained rest comes back to the zero, or to a level yet to be seen.
    if (band.strained && out.fallN > Number.NEGATIVE_INFINITY) out.returnN = this.#homeN;
    // Too little for a clamping for too long: the zero has moved.
    if (out.topN - band.trueN < leastN && !out.overloaded && this.#isTired()) {
      this.beginRest(this.levelNow(), band.strained);
      return;
    }
    if (trace.length >= traceLimit) foldHold(this.filer.stretch(undefined, undefined), out);
  }

  /** Low for five seconds and no longer rising, or for twenty at all. */
  #isTired(): boolean {
    const { trace, out } = this;
    const { patience, quiet } = this.pace;
    const lasted = trace.length - out.onset;
    if (lasted <= patience || lasted > 4 * patience) return lasted > patience;
    const ago = trace.length - (patience >> 1);
    const before = stretchMedian(trace.values, ago - quiet, ago) - out.baseN;
    return !(this.levelNow() - out.baseN > 1.2 * Math.max(before, 0));
  }

  #fall(): void {
    const value = this.trace.values[this.trace.length - 1]!;
    const { out, trace } = this;
    if (value <= out.returnN) {
      out.inside += 1;
      if (out.inside >= this.pace.stay) {
        this.#close(out.returnN - this.band.halfWidthN);
        return;
      }
    } else if (!Number.isNaN(value)) out.inside = 0;
    if (!Number.isNaN(value)) {
      out.noteLow(value, trace.length - 1);
      out.risen = value > out.leastN + this.#riseN() ? out.risen + 1 : 0;
      if (out.risen >= this.pace.stay) {
        this.#riseAgain();
        return;
      }
    }
    if (!out.blockDone(trace, this.pace)) return;
    out.blockFrom = trace.length;
    const level = this.quietNow(out.onset) ?? (trace.length >= traceLimit ? out.leastN : undefined);
    if (level === undefined) return;
    if (level - out.leastN > this.#riseN()) this.#riseAgain();
    else this.#close(level);
  }

  /** A new rise out of a fall: a tenth of the last level, and no less than a clamping needs. */
  #riseN(): number {
    return Math.max(0.1 * (this.out.topN - this.band.trueN), this.filer.leastN);
  }

  /** The next clamping began before the force had come to rest. */
  #riseAgain(): void {
    const { out } = this;
    const found = this.filer.file(out.leastN, this.#rested, false, out.leastAt + 1);
    if (found !== undefined) this.#riseFromLow();
    this.phase = UP;
  }

  /** What was lowest since the fall is where the next clamping begins; no rest lies before it. */
  #riseFromLow(): void {
    const { out, trace, band } = this;
    trace.dropHead(out.leastAt);
    this.initial = false;
    band.from = 0;
    this.#rested = false;
    out.begin(0, out.leastN, this.#homeN);
  }

  /** The stretch in work has come down to `level`. */
  #close(level: number): void {
    const { out, trace, band } = this;
    const found = this.filer.file(level, this.#rested, false);
    if (found === undefined) {
      // A knock or a spike: the rest goes on through it.
      this.phase = REST;
      if (!(level >= band.lowN && level <= band.highN)) this.settleAt(level);
      return;
    }
    this.initial = false;
    this.lastGreatestN = this.greatestN;
    const stay = Math.min(trace.length, out.inside > 0 ? out.inside : this.pace.quiet);
    trace.dropHead(trace.length - stay);
    this.settleAt(level);
  }

  #sink(): void {
    const value = this.trace.values[this.trace.length - 1]!;
    const { out, band, trace } = this;
    if (Number.isNaN(value)) return;
    out.noteLow(value, trace.length - 1);
    out.inside = value >= band.lowN && value <= band.highN ? out.inside + 1 : 0;
    if (out.inside >= this.pace.stay) {
      this.phase = REST;
      return;
    }
    const rise = Math.max(0.3 * (band.centreN - out.leastN), this.filer.leastN);
    out.risen = value > out.leastN + rise && value < band.lowN ? out.risen + 1 : 0;
    if (out.risen >= this.pace.stay) this.#riseFromSink();
    else if (value > band.highN) this.#beginUp(trace.length - 1);
    else if (out.blockDone(trace, this.pace)) this.#lookForFloor();
  }

  #lookForFloor(): void {
    const { out, trace } = this;
    out.blockFrom = trace.length;
    const tired = trace.length - out.onset > this.pace.patience;
    const level = this.quietNow(out.onset) ?? (tired ? this.levelNow() : undefined);
    if (level !== undefined) this.#sunkTo(level);
  }

  /** Down and up again before it stood still: what was taken for a rest had been a hold, or strained. */
  #riseFromSink(): void {
    const { out, band } = this;
    const low = out.leastN;
    if (this.initial && band.centreN - low >= this.filer.leastN) this.#fileBegun(low, out.leastAt + 1);
    band.trueN = Math.min(band.trueN, low);
    this.#riseFromLow();
    band.begin(this.trace, 0, low, low - band.trueN > this.residualN, this.pace);
    out.returnN = this.#homeN;
    this.phase = UP;
  }

  /** The first level of the stream was a hold that had begun before it. */
  #fileBegun(level: number, end: number): void {
    const { band, out } = this;
    const above = band.centreN - level;
    const topN = band.centreN;
    const { leastAt } = out;
    band.trueN = level;
    out.begin(0, level, level + band.halfWidthN);
    out.topN = topN;
    out.leastAt = leastAt;
    out.leastN = level;
    const restOfCut = Math.abs(above - (this.lostLevelN ?? Number.POSITIVE_INFINITY)) < 0.1 * above;
    if (!restOfCut) this.filer.file(level, false, true, end);
  }

  /** A quiet level below the band. The first level of a stream was a hold, if it lies so much higher. */
  #sunkTo(level: number): void {
    const { band, trace } = this;
    if (this.initial && band.centreN - level >= this.filer.leastN) {
      this.#fileBegun(level, trace.length);
      this.initial = false;
      trace.dropHead(Math.max(0, trace.length - this.pace.quiet));
    }
    this.settleAt(level);
  }
}
