import type { Rest } from "../Cycle.ts";
import { stretchMedian } from "../read/stretch.ts";
import type { EmitCycle } from "./CycleDesk.ts";
import { CycleFiler } from "./CycleFiler.ts";
import { Excursion } from "./Excursion.ts";
import { type Pace, paceAt } from "./Pace.ts";
import { quietLevel } from "./quietLevel.ts";
import { steadyZero, type ZeroOutcome } from "./steadyZero.ts";
import { Trace } from "./Trace.ts";
import { ZeroBand } from "./ZeroBand.ts";

export const SEEK = 0; // no level known yet
export const REST = 1; // inside the zero band
export const UP = 2; // above it: a knock, a rise, a hold
export const FALL = 3; // fell by half and more; where will it stay?
export const SINK = 4; // below the band: a strained rest was released, or the zero moved

/** A zero that jumps by so many standard deviations of the rest was set anew. */
const jumpScatters = 20;

/** What all phases share: the readings, the zero band, the stretch in work, and how a rest begins. */
export class PhaseGround {
  phase = SEEK;
  readonly trace = new Trace();
  readonly band = new ZeroBand();
  readonly out = new Excursion();
  pace: Pace;
  protected readonly filer: CycleFiler;
  /** No clamping since the start or the last gap: the first rest may turn out to be a hold. */
  protected initial = true;
  protected lastGreatestN: number | undefined;
  /** What was in the air when the link was lost, net. */
  protected lostLevelN: number | undefined;

  constructor(rateHz: number | undefined, capacityN: number | undefined, emit: EmitCycle) {
    this.trace.rateHz = rateHz;
    this.pace = paceAt(rateHz);
    this.filer = new CycleFiler(this.trace, this.band, this.out, capacityN, emit);
  }

  /** Twice a second of rest. */
  lookAtRest(): void {
    this.setPace();
    this.band.refresh(this.trace, this.pace);
    if (this.band.rested(this.trace) >= this.pace.release) this.filer.complete(this.band.strained);
  }

  /** Whether the force stands still now. */
  isQuiet(): boolean {
    return this.quietNow(this.out.onset) !== undefined;
  }

  /** Greatest indication of the clamping in work, or of the last one. Looked for when asked, not reading by reading. */
  get greatestN(): number | undefined {
    if (this.phase !== UP && this.phase !== FALL) return this.lastGreatestN;
    let top = this.out.foldedPeakN ?? Number.NEGATIVE_INFINITY;
    const { values, length } = this.trace;
    for (let i = this.out.onset; i < length; i += 1)
      if (values[i]! > top && values[i]! < Number.POSITIVE_INFINITY) top = values[i]!;
    return Number.isFinite(top) ? top : undefined;
  }

  /** The rest in progress, where it is a true one. */
  get restNow(): Rest | undefined {
    if (this.phase !== REST || this.band.strained) return undefined;
    return this.band.restUpTo(this.trace, this.trace.length)?.rest;
  }

  /** The user's word that nothing presses now; from here on this is the zero. */
  takeZero(): ZeroOutcome {
    if (this.phase === UP || this.phase === FALL || (this.phase === REST && this.band.strained)) {
      return { kind: "refused", reason: this.phase === REST || this.isQuiet() ? "loaded" : "moving" };
    }
    const outcome = steadyZero(this.trace, this.phase === SEEK ? undefined : this.band.sigmaN, this.band.stepN);
    if (outcome.kind === "refused") return outcome;
    this.initial = false;
    this.beginRest(outcome.zeroN, false);
    this.band.reset = true;
    return outcome;
  }

  /** A rest begins at `level`: strained when the last cycle left force in it. */
  protected settleAt(level: number): void {
    this.beginRest(level, level - this.band.trueN > this.residualN);
  }

  /** What a release may leave and still be one. */
  protected get residualN(): number {
    return this.filer.desk.residualN ?? this.band.halfWidthN;
  }

  protected beginRest(level: number, strained: boolean): void {
    const { band } = this;
    // A key on the gauge moves the zero farther at once than drift does.
    const jump = Math.abs(level - band.centreN) > Math.max(jumpScatters * band.sigmaN, 3 * band.stepN);
    if (jump && !strained && !band.strained && !this.filer.desk.waiting && this.phase !== SEEK) band.reset = true;
    if (this.phase !== SEEK) this.lostLevelN = undefined;
    const from = Math.max(0, this.trace.length - this.pace.quiet);
    this.band.begin(this.trace, from, level, strained, this.pace);
    this.phase = REST;
  }

  /** The level of the last third of a second, when it is one and nothing before index `after` belongs to it. */
  protected quietNow(after: number): number | undefined {
    const { trace } = this;
    const from = trace.length - this.pace.quiet;
    return from < after ? undefined : quietLevel(trace.values, from, trace.length, this.band.stepN, this.band.sigmaN);
  }

  protected levelNow(): number {
    const level = stretchMedian(this.trace.values, this.trace.length - this.pace.quiet, this.trace.length);
    return Number.isNaN(level) ? this.band.centreN : level;
  }

  /** With stamps the rate is what they show. */
  protected setPace(): void {
    const { trace } = this;
    if (trace.times === undefined || trace.length < 8) return;
    const span = trace.secondsBetween(0, trace.length - 1);
    if (!(span > 0)) return;
    const rate = (trace.length - 1) / span;
    if (trace.rateHz !== undefined && Math.abs(rate / trace.rateHz - 1) < 0.02) return;
    trace.rateHz = rate;
    this.pace = paceAt(rate);
  }
}
