import type { LinkState } from "../../app/contract/linkViews.ts";
import type { Rest } from "../../app/cycle/Cycle.ts";
import type { LiveState } from "../../app/cycle/LiveState.ts";
import type { ZeroOutcome } from "../../app/cycle/phase/steadyZero.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import { Intake } from "./Intake.ts";
import type { LinkProblem } from "./LinkProblem.ts";
import { type LinkDeps, LiveLink } from "./LiveLink.ts";
import type { SessionReceiver, SessionSettings, SessionStatus } from "./SessionTypes.ts";
import { keepBounds, type SpoolLimits } from "./spoolBounds.ts";

/** What a session needs of the machine; a test hands in its own. */
export type SessionDeps = LinkDeps & {
  /** Where spools are kept. */
  readonly spoolFolder: string;
  readonly spoolLimits?: SpoolLimits | undefined;
  /** For faults of our own on the way; the bytes are in the spool by then. */
  readonly onFault: (cause: unknown) => void;
};

/**
 * One gauge on one link, from opening to closing, over any number of unpluggings: bytes to the spool, then to readings
 * and cycles. It is used once: for another port, or another pattern than the one it has, close it and open a new one.
 */
export class Session {
  readonly settings: SessionSettings;
  readonly #deps: SessionDeps;
  readonly #receiver: SessionReceiver;
  readonly #intake: Intake;
  readonly #link: LiveLink;
  #pattern: LinePattern | undefined;
  #rateHz: number | undefined;
  #problem: LinkProblem | undefined;
  #spoolProblem: LinkProblem | undefined;
  #trimmed = false;
  #lastS: number | undefined; // of the latest place
  #cancelBounds: (() => void) | undefined;
  #ended = false;

  constructor(settings: SessionSettings, deps: SessionDeps, receiver: SessionReceiver) {
    this.settings = settings;
    this.#deps = deps;
    this.#receiver = receiver;
    this.#pattern = settings.pattern;
    this.#rateHz = settings.rateHz;
    const { source, usb, silenceMs, pattern } = settings;
    this.#link = new LiveLink(
      source,
      deps,
      {
        bytes: (chunk) => this.#intake.bytes(chunk),
        gap: (why, lastedMs) => this.#gap(why, lastedMs),
        state: (_, problem) => this.#changed(problem),
        ended: () => void this.#end(),
      },
      { usb, silenceMs, pattern },
    );
    this.#intake = new Intake(
      {
        settings,
        clock: deps.clock,
        spoolFolder: source.kind === "file" ? undefined : deps.spoolFolder,
        onSpoolFailed: (cause) => this.#spoolFailed(cause),
        onSpoolWritable: () => {
          this.#spoolProblem = undefined;
          this.#changed(this.#problem);
        },
        onFault: deps.onFault,
      },
      {
        cycle: (cycle, waveform) => receiver.cycle(cycle, waveform),
        readings: (batch) => {
          this.#lastS = batch.timesS[batch.n - 1];
          receiver.readings(batch);
        },
        notice: (notice) => receiver.notice?.(notice),
        unit: () => this.#changed(this.#problem),
      },
    );
  }

  /** @throws LinkError  the source cannot be opened; the status says the same */
  async open(): Promise<void> {
    if (this.settings.source.kind !== "file") this.#gap("opened", undefined);
    try {
      await this.#link.open();
    } catch (cause) {
      await this.#end();
      throw cause;
    }
    this.#planBounds(0);
  }

  /** Reads with this pattern from the first byte that is still known. Only for a session opened without one. */
  setPattern(pattern: LinePattern, rateHz?: number, capacityN = this.settings.capacityN): void {
    this.#intake.setPattern(pattern, rateHz, capacityN);
    this.#pattern = pattern;
    this.#rateHz = rateHz;
    this.#link.setPattern(pattern);
    this.#changed(this.#problem);
  }

  /** Takes the last second of readings as the zero, when it is one of rest; undefined before there is a pattern. */
  takeZero(): ZeroOutcome | undefined {
    return this.#intake.takeZero();
  }

  /** Notes in the spool what became of a series, so that a recovery offers only what is not filed. */
  mark(seriesId: string, what: "began" | "filed" | "cleared"): void {
    this.#intake.mark(seriesId, what);
  }

  /** Closes the link; a cycle in work is handed out as cut before this resolves. */
  async close(): Promise<void> {
    await this.#link.close();
    await this.#end();
  }

  /** The last bytes (64 KiB at most) and how long they took to come, for raw lines and for learning. */
  tail(): { readonly bytes: Uint8Array; readonly durationS: number | undefined } {
    return this.#intake.tail();
  }

  /** Where the force stands now; undefined before there is a pattern. */
  get live(): LiveState | undefined {
    return this.#intake.feed.stream?.live;
  }

  /** The rest in progress, for a zero and for `applyZeros`. */
  get restNow(): Rest | undefined {
    return this.#intake.feed.stream?.restNow;
  }

  status(): SessionStatus {
    const { feed, counters, spoolFile } = this.#intake;
    return {
      state: this.#state(),
      label: this.settings.label ?? this.#link.label,
      source: this.#link.source,
      usb: this.#link.usb,
      pattern: this.#pattern,
      unit: feed.unit,
      rateHz: feed.stream?.rateHz ?? this.#rateHz,
      resolutionN: feed.stream?.resolutionN,
      counters,
      problem: this.#problem ?? this.#spoolProblem,
      spoolTrimmed: this.#trimmed,
      spoolFile,
    };
  }

  #state(): LinkState {
    const { state } = this.#link;
    return state === "open" && this.#pattern === undefined ? "listening" : state;
  }

  #gap(why: string, lastedMs: number | undefined): void {
    this.#intake.gap(why, lastedMs);
    if (why !== "opened" && why !== "resumed") this.#receiver.gap(Number.isNaN(this.#lastS) ? undefined : this.#lastS);
  }

  #changed(problem: LinkProblem | undefined): void {
    this.#problem = problem;
    this.#receiver.changed(this.status());
  }

  #spoolFailed(cause: Error): void {
    this.#spoolProblem = {
      code: "spoolFailed",
      message: `the running record cannot be written (${cause.message}): measuring goes on, but cycles not yet filed would be lost with the program; make room on the disk`,
    };
    this.#deps.onFault(cause);
    queueMicrotask(() => this.#changed(this.#problem)); // it can fail while this is still being built
  }

  #planBounds(afterMs: number): void {
    if (this.#intake.spoolFile === undefined) return;
    this.#cancelBounds = this.#deps.clock.after(afterMs, () => {
      const { spoolFolder, spoolLimits, clock } = this.#deps;
      keepBounds({ folder: spoolFolder, nowMs: clock.wallMs(), limits: spoolLimits, inUse: this.#intake.spoolFile })
        .then(({ trimmed }) => {
          if (trimmed && !this.#trimmed) {
            this.#trimmed = true;
            this.#changed(this.#problem);
          }
        }, this.#deps.onFault)
        .finally(() => {
          if (!this.#ended) this.#planBounds(BOUNDS_MS);
        });
    });
  }

  async #end(): Promise<void> {
    if (this.#ended) return;
    this.#ended = true;
    this.#cancelBounds?.();
    await this.#intake.end();
  }
}

/** Ten minutes of a fast gauge are some ten megabytes: often enough. */
const BOUNDS_MS = 600_000;
