import { applyZeros } from "../../app/cycle/applyZeros.ts";
import type { Cycle } from "../../app/cycle/Cycle.ts";
import { GaugeStream } from "../../app/cycle/GaugeStream.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { type CommandIo, UsageError } from "./Command.ts";
import { learnFrom } from "./choosePattern.ts";
import { type RecordingPart, readRecording } from "./readRecording.ts";

export type DetectOptions = {
  readonly unit: ForceUnit | undefined;
  readonly pattern: LinePattern | undefined;
  readonly capacityN: number | undefined;
  readonly rateHz: number | undefined;
};

export type Detected = {
  readonly pattern: LinePattern;
  readonly unit: ForceUnit | undefined;
  readonly unitChanges: readonly { readonly atIndex: number; readonly unit: ForceUnit }[];
  readonly rateHz: number | undefined;
  readonly samples: number;
  readonly linesRejected: number;
  readonly cycles: readonly Cycle[];
};

/** Bytes a pattern is learned from: more than a minute of the fastest serial gauge. */
const learnedFrom = 4 << 20;

/**
 * A recording to cycles, whatever its length, in bounded memory. A spool's own pattern, rate and capacity are used
 * where the options say nothing; a spool whose pattern was changed on the way is read anew from there.
 * @throws UsageError  the file cannot be read, or how to read its lines stays open
 */
export async function detectCycles(file: string | undefined, options: DetectOptions, io: CommandIo): Promise<Detected> {
  const where = file === undefined || file === "-" ? "standard input" : file;
  const reading = new Reading(options, where);
  for await (const part of readRecording(file, io)) {
    if (io.signal.aborted) throw new UsageError(`${where}: stopped`);
    reading.take(part);
  }
  return reading.finish();
}

class Reading {
  readonly #options: DetectOptions;
  readonly #where: string;
  #pattern: LinePattern | undefined;
  #rateHz: number | undefined;
  #capacityN: number | undefined;
  /** Parts that wait for a pattern. */
  #waiting: RecordingPart[] = [];
  #waitingBytes = 0;
  #stream: GaugeStream | undefined;
  readonly #units: { atIndex: number; unit: ForceUnit }[] = [];
  readonly #cycles: Cycle[] = [];
  #series: Cycle[] = []; // of the stream in work
  #samples = 0;
  #rejected = 0;

  constructor(options: DetectOptions, where: string) {
    this.#options = options;
    this.#where = where;
    this.#pattern = options.pattern;
    this.#rateHz = options.rateHz;
    this.#capacityN = options.capacityN;
  }

  take(part: RecordingPart): void {
    if (part.kind === "settings") this.#settings(part);
    else if (this.#pattern !== undefined) this.#read(part);
    else {
      this.#waiting.push(part);
      if (part.kind === "bytes") this.#waitingBytes += part.bytes.length;
      if (this.#waitingBytes >= learnedFrom) this.#learn();
    }
  }

  finish(): Detected {
    if (this.#pattern === undefined) this.#learn();
    const rateHz = this.#stream?.rateHz;
    this.#endStream();
    return {
      pattern: this.#pattern!, // learned, or refused, just above
      unit: this.#units[0]?.unit,
      unitChanges: this.#units.slice(1),
      rateHz,
      samples: this.#samples,
      linesRejected: this.#rejected,
      cycles: this.#cycles,
    };
  }

  #settings({ pattern, rateHz, capacityN }: Extract<RecordingPart, { kind: "settings" }>): void {
    this.#rateHz = rateHz ?? this.#rateHz;
    this.#capacityN = this.#options.capacityN ?? capacityN ?? this.#capacityN;
    if (pattern === undefined || this.#options.pattern !== undefined) return;
    if (JSON.stringify(pattern) === JSON.stringify(this.#pattern)) return;
    this.#endStream();
    this.#pattern = pattern;
    this.#readWaiting();
  }

  #learn(): void {
    const chunks = this.#waiting.flatMap((part) => (part.kind === "bytes" ? [part.bytes] : []));
    this.#pattern = learnFrom(Buffer.concat(chunks), this.#where, this.#options.unit);
    this.#readWaiting();
  }

  #readWaiting(): void {
    const waiting = this.#waiting;
    this.#waiting = [];
    this.#waitingBytes = 0;
    for (const part of waiting) this.#read(part);
  }

  #read(part: RecordingPart): void {
    this.#stream ??= this.#begin();
    if (part.kind === "bytes") this.#stream.push(part.bytes);
    else if (part.kind === "zero") this.#stream.takeZero();
    // A gauge that sends when asked or told to is in no line when its port is opened: as the session reads it.
    else if (part.kind === "gap" && (part.why !== "opened" || this.#pattern?.sends === "always")) this.#stream.gap();
  }

  #begin(): GaugeStream {
    const given = this.#pattern!; // only called once there is one
    const pattern =
      given.unit === undefined && this.#options.unit !== undefined ? { ...given, unit: this.#options.unit } : given;
    try {
      return new GaugeStream(
        { pattern, rateHz: this.#rateHz, capacityN: this.#capacityN },
        {
          cycle: (cycle) => this.#series.push(cycle),
          unit: (unit, atIndex) => this.#units.push({ atIndex, unit }),
        },
      );
    } catch (cause) {
      if (!(cause instanceof RangeError)) throw cause;
      throw new UsageError(`${this.#where}: the numbers come without a unit; say which with --unit, as in --unit kN`);
    }
  }

  #endStream(): void {
    if (this.#stream === undefined) return;
    const closing = this.#stream.end();
    const { readings, rejected } = this.#stream.counts;
    this.#samples += readings;
    for (const count of Object.values(rejected)) this.#rejected += count;
    this.#cycles.push(...applyZeros(this.#series, closing).cycles);
    this.#series = [];
    this.#stream = undefined;
  }
}
