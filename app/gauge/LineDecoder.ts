import type { ForceUnit } from "../quantity/forceUnits.ts";
import { controlCode } from "./controlCharacters.ts";
import { type LineOutcome, LineReader } from "./LineReader.ts";
import { type LineEnd, type LineReceiver, LineSplitter } from "./LineSplitter.ts";
import type { LinePattern, WordMeaning } from "./linePattern.ts";
import { type LineProofs, lineProofs } from "./lineProofs.ts";
import { ParityStripper } from "./ParityStripper.ts";
import type { ReadingSink, RejectReason } from "./ReadingSink.ts";
import { type WholeLineMeaning, WholeLines } from "./WholeLines.ts";

/** What a decoder has seen so far. */
export type LineCounts = {
  lines: number;
  readings: number;
  /** Echoes and bare status lines. */
  asides: number;
  readonly rejected: Record<RejectReason, number>;
};

/** Longest line read; what is longer has lost its line end. */
const maxLineLength = 480;

/**
 * Bytes in, readings out, by a learned or stored pattern. Any chunking of the same bytes gives the same calls.
 * On the way of a good line no string and no object is made.
 */
export class LineDecoder implements LineReceiver {
  readonly counts: LineCounts = {
    lines: 0,
    readings: 0,
    asides: 0,
    rejected: { tooLong: 0, notAscii: 0, parity: 0, frame: 0, fields: 0, number: 0, unit: 0, checksum: 0, torque: 0 },
  };
  readonly #splitter: LineSplitter;
  readonly #reader: LineReader;
  readonly #parity: ParityStripper | undefined;
  readonly #whole: WholeLines;
  readonly #startByte: number; // -1: lines have none
  readonly #proofs: LineProofs;
  #sink: ReadingSink = silence;
  #joining = false; // the next line may lack its beginning
  #ending = false; // the line has no end, because the file has
  #unit: ForceUnit | undefined;
  #notice: WordMeaning = "other";
  #resolutionN: number | undefined;
  #lastPlaces = -1;

  /** @throws RangeError  the pattern's numbers come bare and it does not say in which unit */
  constructor(pattern: LinePattern) {
    if (pattern.unit === undefined && !pattern.fields.some((f) => f.field === "unit" && !f.optional)) {
      throw new RangeError("LineDecoder requires the unit of bare numbers");
    }
    const start = pattern.fields[0]!;
    this.#startByte = start.field === "control" ? controlCode(start.name) : -1;
    this.#splitter = new LineSplitter(maxLineLength, lineEnds[pattern.terminator], pattern.fill);
    this.#reader = new LineReader(pattern);
    this.#parity = pattern.parity === "none" ? undefined : new ParityStripper(pattern.parity);
    this.#whole = new WholeLines(pattern.lines);
    this.#proofs = lineProofs(pattern);
  }

  /** One step of the last digit of the latest reading, newtons; undefined before the first. */
  get resolutionN(): number | undefined {
    return this.#resolutionN;
  }

  /** Takes the next chunk and hands on what it completes. */
  push(chunk: Uint8Array, sink: ReadingSink): void {
    this.#sink = sink;
    if (this.#parity === undefined) this.#splitter.push(chunk, this);
    else this.#parity.strip(chunk, (clean) => this.#splitter.push(clean, this));
    this.#sink = silence;
  }

  /**
   * The stream has ended, as a file does. A last line without its line end is read where the pattern proves it
   * whole (a unit, a word, a fixed width or a checksum stands last); else it is neither reading nor rejected.
   */
  end(sink: ReadingSink): void {
    this.#sink = sink;
    this.#ending = true;
    if (this.#proofs.end) this.#splitter.end(this);
    else this.#splitter.forget();
    this.#ending = false;
    this.#sink = silence;
  }

  /**
   * Bytes were lost here (the port was just opened, or came back). The line in work is forgotten, and the next one
   * is read only where the pattern proves that its beginning is there; else it counts as nothing.
   */
  gap(): void {
    this.#splitter.forget();
    this.#joining = true;
  }

  overlong(): void {
    this.counts.lines += 1;
    this.#joining = false;
    this.#reject("tooLong");
  }

  line(bytes: Uint8Array, from: number, to: number): void {
    let end = to;
    while (end > from && (bytes[end - 1] === CR || bytes[end - 1] === LF)) end -= 1;
    if (end === from) return;
    if (this.#joining) {
      this.#joining = false;
      if (!this.#proofs.beginning) return;
    }
    const outcome = this.#reader.read(bytes, from, end);
    if (outcome === "reading") {
      this.counts.lines += 1;
      this.#emit();
    } else this.#otherwise(bytes, from, end, outcome);
  }

  #emit(): void {
    const reader = this.#reader;
    this.counts.readings += 1;
    if (reader.unit !== this.#unit || reader.places !== this.#lastPlaces) this.#newScale();
    if (reader.notice !== "other") this.#tell(reader.notice);
    this.#sink.reading(reader.forceN, reader.state, reader.stampS);
  }

  #newScale(): void {
    const reader = this.#reader;
    if (reader.hasForce) {
      this.#lastPlaces = reader.places;
      this.#resolutionN = reader.resolutionN;
    }
    if (reader.unit === this.#unit) return;
    this.#unit = reader.unit;
    this.#sink.unit?.(reader.unit);
  }

  /** What is no reading at first sight. Good lines never come here, so it may look twice. */
  #otherwise(bytes: Uint8Array, from: number, to: number, outcome: LineOutcome): void {
    const means = outcome === "aside" ? "status" : this.#whole.find(bytes, from, to);
    if (this.#ending && means === undefined) return;
    this.counts.lines += 1;
    if (outcome === "aside" && this.#reader.notice !== "other") this.#tell(this.#reader.notice);
    if (means !== undefined) this.#aside(means);
    else if (!this.#readParts(bytes, from, to)) this.#rejectOrRestart(bytes, from, to, outcome as RejectReason);
  }

  /** A lost CR or LF runs two lines together. They are read when every part is a whole line, else none is. */
  #readParts(bytes: Uint8Array, from: number, to: number): boolean {
    const ends = strayEnds(bytes, from, to);
    if (ends.length === 0 || !this.#proofs.beginning || !this.#proofs.end) return false;
    const reads = (i: number) =>
      this.#reader.read(bytes, i === 0 ? from : ends[i - 1]! + 1, ends[i] ?? to) === "reading";
    for (let i = 0; i <= ends.length; i += 1) if (!reads(i)) return false;
    for (let i = 0; i <= ends.length; i += 1) {
      reads(i);
      this.#emit();
    }
    this.counts.lines += ends.length;
    return true;
  }

  /** A start byte inside a line begins the next one: the end of the first is lost. */
  #rejectOrRestart(bytes: Uint8Array, from: number, to: number, reason: RejectReason): void {
    this.#reject(hasHighBit(bytes, from, to) ? (this.#parity === undefined ? "notAscii" : "parity") : reason);
    if (this.#startByte < 0) return;
    const restart = bytes.subarray(from + 1, to).lastIndexOf(this.#startByte);
    if (restart >= 0 && restart + from + 2 < to) this.line(bytes, from + 1 + restart, to);
  }

  #aside(means: WholeLineMeaning): void {
    if (means === "overload") {
      this.counts.readings += 1;
      this.#sink.reading(0, "overload", Number.NaN);
      return;
    }
    this.counts.asides += 1;
    if (means === "lowBattery" || means === "underload") this.#tell(means);
    this.#sink.aside?.(means === "echo" ? "echo" : "status");
  }

  #tell(means: WordMeaning): void {
    if (means === this.#notice) return;
    this.#notice = means;
    if (means === "lowBattery" || means === "moving" || means === "stable" || means === "underload")
      this.#sink.notice?.(means);
  }

  #reject(reason: RejectReason): void {
    this.counts.rejected[reason] += 1;
    this.#sink.rejected(reason);
  }
}

const lineEnds: Record<LinePattern["terminator"], LineEnd> = { CR: "CR", LF: "LF", CRLF: "LF", ETX: "ETX", any: "any" };

/** Where calls go while no chunk is in work: nowhere. */
const silence: ReadingSink = { reading() {}, rejected() {} };

function hasHighBit(bytes: Uint8Array, from: number, to: number): boolean {
  for (let i = from; i < to; i += 1) if (bytes[i]! > 0x7f) return true;
  return false;
}

function strayEnds(bytes: Uint8Array, from: number, to: number): number[] {
  const ends: number[] = [];
  for (let i = from; i < to; i += 1) if (bytes[i] === CR || bytes[i] === LF) ends.push(i);
  return ends;
}

const LF = 0x0a;
const CR = 0x0d;
