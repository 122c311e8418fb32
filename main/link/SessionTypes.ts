import type { LinkState, Source } from "../../app/contract/linkViews.ts";
import type { Cycle, Waveform } from "../../app/cycle/Cycle.ts";
import type { ReadingBatch } from "../../app/cycle/GaugeStream.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import type { RejectReason } from "../../app/gauge/ReadingSink.ts";
import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import type { LinkProblem } from "./LinkProblem.ts";

/** How a port is known again when it comes back under another name. */
export type UsbIdentity = {
  readonly serialNumber?: string | undefined;
  readonly vendorId?: string | undefined;
  readonly productId?: string | undefined;
};

/** What a session is opened with. All of it stands in the spool's first record, so that a replay needs nothing else. */
export type SessionSettings = {
  /** Names the spool file; a UUID. */
  readonly sessionId: string;
  readonly source: Source;
  /** The source's name as the user knows it; absent: the source's own. */
  readonly label?: string | undefined;
  /** Absent: bytes are kept and nothing is read of them until `setPattern` (state `listening`). */
  readonly pattern?: LinePattern | undefined;
  /** Readings a second where the gauge sends no time of its own. */
  readonly rateHz?: number | undefined;
  readonly capacityN?: number | undefined;
  readonly gaugeId?: string | undefined;
  /** The series that was in work when the session was opened. */
  readonly seriesId?: string | undefined;
  readonly usb?: UsbIdentity | undefined;
  /** No byte for so long is silence; default 3 s. */
  readonly silenceMs?: number | undefined;
};

export type LinkCounters = {
  readonly bytes: number;
  /** Readings, rejected lines and asides together. */
  readonly lines: number;
  readonly readings: number;
  readonly rejected: number;
  readonly byReason: Partial<Record<RejectReason, number>>;
  /** How often the link was lost and came back. */
  readonly gaps: number;
  /** Lines a second over the last seconds, by arrival; undefined until some have come. */
  readonly lineRateHz: number | undefined;
};

export type SessionStatus = {
  readonly state: LinkState;
  readonly label: string;
  readonly source: Source;
  readonly usb: UsbIdentity | undefined;
  readonly pattern: LinePattern | undefined;
  readonly unit: ForceUnit | undefined;
  readonly rateHz: number | undefined;
  /** The step of the last digit the gauge sends. */
  readonly resolutionN: number | undefined;
  readonly counters: LinkCounters;
  readonly problem: LinkProblem | undefined;
  readonly spoolTrimmed: boolean;
  /** Where this session's bytes are kept; undefined for files, which are their own record. */
  readonly spoolFile: string | undefined;
};

/** Where a session's results go. No call may throw; none is made after `close` has resolved. */
export type SessionReceiver = {
  /** State, problem, unit, pattern or trim have changed. Counters alone call nothing: ask `status()`. */
  changed(status: SessionStatus): void;
  /** Lent until the call returns. */
  readings(batch: ReadingBatch): void;
  cycle(cycle: Cycle, waveform: Waveform): void;
  /** A word of the gauge's with a meaning for the user, each time it changes. */
  notice?(notice: "lowBattery" | "moving" | "stable" | "underload"): void;
  /** The link was lost at this time of the stream (seconds, undefined without a clock). */
  gap(atS: number | undefined): void;
};
