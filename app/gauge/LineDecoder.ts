import type { LineCounts } from "./LineCounts.ts";
import { type LineOutcome, LineReader } from "./LineReader.ts";
import { type LineReceiver, LineSplitter, lineEnds } from "./LineSplitter.ts";
import { hasHighBit, partsOf } from "./lineFaults.ts";
import type { LinePattern } from "./linePattern.ts";
import { type LineProofs, lineProofs } from "./lineProofs.ts";
import { needsUnit } from "./needsUnit.ts";
import { ParityStripper } from "./ParityStripper.ts";
import type { ReadingSink } from "./ReadingSink.ts";
import { SinkWriter } from "./SinkWriter.ts";
import { shownLine } from "./shownLine.ts";
import { WholeLines } from "./WholeLines.ts";

export type { LineCounts } from "./LineCounts.ts";

/** Longest line read; what is longer has lost its line end. */
const maxLineLength = 480;

/**
 * Bytes in, readings out, by a learned or stored pattern. Any chunking of the same bytes gives the same calls.
 * On the way of a good line no string and no object is made.
 */
export class LineDecoder implements LineReceiver {
  readonly #out = new SinkWriter();
  readonly #splitter: LineSplitter;
  readonly #readers: readonly LineReader[]; // one a form; the first that reads a line has it
  #reader: LineReader; // the one that read the line in work
  readonly #parity: ParityStripper | undefined;
  readonly #whole: WholeLines;
  readonly #proofs: LineProofs;
  #joining = false; // the next line may lack its beginning
  #ending = false; // the line has no end, because the file has
  #bytes: Uint8Array = new Uint8Array(0); // the line in work
  #from = 0;
  #to = 0;
  #usualLength = 0; // a chunk's rest shorter than the last line holds no whole one: it is not tried

  /** @throws RangeError  the pattern's numbers come bare and it does not say in which unit */
  constructor(pattern: LinePattern) {
    if (pattern.unit === undefined && needsUnit(pattern))
      throw new RangeError("LineDecoder requires the unit of bare numbers");
    this.#splitter = new LineSplitter(maxLineLength, lineEnds[pattern.terminator], pattern.fill, pattern.afterEnd);
    this.#readers = [pattern.fields, ...pattern.others.map((o) => o.fields)].map((f) => new LineReader(f, pattern));
    this.#reader = this.#readers[0]!;
    this.#parity =
      pattern.parity === "none" ? undefined : new ParityStripper(pattern.parity, pattern.terminator === "CRLF");
    this.#whole = new WholeLines(pattern.lines);
    this.#proofs = lineProofs(pattern);
  }

  get counts(): LineCounts {
    return this.#out.counts;
  }

  /** One step of the last digit of the latest reading, newtons; undefined before the first. */
  get resolutionN(): number | undefined {
    return this.#out.resolutionN;
  }

  /** The figure of the latest reading as the gauge wrote it, in its unit; 0 for an overload without a figure. */
  get value(): number {
    return this.#reader.hasForce ? this.#reader.value : 0;
  }

  /**
   * The line a call of the sink is about, for the eye: control characters by name, bits beyond seven as hexadecimal;
   * empty for one that was too long. Only right while that call lasts.
   */
  get rawLine(): string {
    return shownLine(this.#bytes, this.#from, this.#to);
  }

  /** The same line in its bytes, without parity; a copy. */
  get rawBytes(): Uint8Array {
    return this.#bytes.slice(this.#from, this.#to);
  }

  /** Takes the next chunk and hands on what it completes. */
  push(chunk: Uint8Array, sink: ReadingSink): void {
    this.#out.sink = sink;
    if (this.#parity === undefined) this.#take(chunk);
    else this.#parity.strip(chunk, (clean) => this.#take(clean));
    this.#out.rest();
  }

  /**
   * A line that begins in this chunk is read on the spot, without looking for its end first: fields match no line
   * end, so a reading whose fields end at one is the same line the splitter would cut. All else goes through it.
   */
  #take(chunk: Uint8Array): void {
    const splitter = this.#splitter;
    const reader = this.#readers[0]!;
    const size = chunk.length;
    let from = 0;
    while (from < size) {
      if (splitter.atStart && !this.#joining && size - from > this.#usualLength) {
        const at = reader.readFields(chunk, from, size);
        const next = at < 0 ? -1 : splitter.behindEnd(chunk, at);
        if (next >= 0 && at - from <= maxLineLength && reader.judge() === 0) {
          this.#reader = reader;
          this.#out.counts.lines += 1;
          this.#usualLength = next - from;
          this.#bytes = chunk;
          this.#from = from;
          this.#to = at;
          this.#out.reading(this.#reader);
          from = next;
          continue;
        }
      }
      from = splitter.next(chunk, from, this);
    }
  }

  /**
   * The stream has ended, as a file does. A last line without its line end is read where the pattern proves it
   * whole (a unit, a word, a fixed width or a checksum stands last); else it is neither reading nor rejected.
   */
  end(sink: ReadingSink): void {
    this.#out.sink = sink;
    this.#ending = true;
    if (this.#proofs.end) this.#splitter.end(this);
    else this.#splitter.forget();
    this.#ending = false;
    this.#out.rest();
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
    this.#out.counts.lines += 1;
    this.#joining = false;
    this.#to = this.#from;
    this.#out.rejected("tooLong");
  }

  line(bytes: Uint8Array, from: number, to: number): void {
    let end = to;
    while (end > from && (bytes[end - 1] === CR || bytes[end - 1] === LF)) end -= 1;
    if (end === from) return;
    this.#bytes = bytes;
    this.#from = from;
    this.#to = end;
    if (this.#joining) {
      this.#joining = false;
      if (!this.#proofs.beginning) return;
    }
    const outcome = this.#read(bytes, from, end);
    if (outcome === "reading") {
      this.#out.counts.lines += 1;
      this.#usualLength = end - from;
      this.#out.reading(this.#reader);
    } else this.#otherwise(bytes, from, end, outcome);
  }

  /** Tries the forms in their order; the reason of a refusal is the first form's. */
  #read(bytes: Uint8Array, from: number, to: number): LineOutcome {
    const refusal = this.#readers[0]!.read(bytes, from, to);
    this.#reader = this.#readers[0]!;
    if (refusal === "reading" || refusal === "aside") return refusal;
    for (let k = 1; k < this.#readers.length; k += 1) {
      const outcome = this.#readers[k]!.read(bytes, from, to);
      if (outcome !== "reading" && outcome !== "aside") continue;
      this.#reader = this.#readers[k]!;
      return outcome;
    }
    return refusal;
  }

  /** What is no reading at first sight. Good lines never come here, so it may look twice. */
  #otherwise(bytes: Uint8Array, from: number, to: number, outcome: LineOutcome): void {
    const means = outcome === "aside" ? "status" : this.#whole.find(bytes, from, to);
    if (this.#ending && means === undefined) return;
    this.#out.counts.lines += 1;
    if (outcome === "aside" && this.#reader.notice !== "other") this.#out.notice(this.#reader.notice);
    if (means !== undefined) this.#out.aside(means);
    else if (!this.#readParts(bytes, from, to)) {
      this.#refuse(bytes, from, to, outcome);
      this.#restart(bytes, from, to);
    }
  }

  /**
   * A lost or altered CR or LF runs two lines together. Where the pattern proves lines whole at both ends, each part is
   * taken for what it is; but when none is a reading, the stray line end is itself the damage, and the line was one.
   */
  #readParts(bytes: Uint8Array, from: number, to: number): boolean {
    if (!this.#proofs.beginning || !this.#proofs.end) return false;
    const parts = partsOf(bytes, from, to);
    if (parts.length < 2) return false;
    const outcomes = parts.map((part) => this.#read(bytes, part.from, part.to));
    if (!outcomes.includes("reading")) return false;
    this.#out.counts.lines += parts.length - 1;
    parts.forEach((part, i) => {
      this.#from = part.from;
      this.#to = part.to;
      if (outcomes[i] !== "reading") this.#refuse(bytes, part.from, part.to, outcomes[i]!);
      else if (this.#read(bytes, part.from, part.to) === "reading") this.#out.reading(this.#reader);
    });
    return true;
  }

  #refuse(bytes: Uint8Array, from: number, to: number, outcome: LineOutcome): void {
    const reason = outcome === "reading" || outcome === "aside" ? "frame" : outcome;
    this.#out.rejected(hasHighBit(bytes, from, to) ? (this.#parity === undefined ? "notAscii" : "parity") : reason);
  }

  /** A start byte inside a line begins the next one: the end of the first is lost. */
  #restart(bytes: Uint8Array, from: number, to: number): void {
    if (this.#proofs.startByte < 0) return;
    const restart = bytes.subarray(from + 1, to).lastIndexOf(this.#proofs.startByte);
    if (restart >= 0 && restart + from + 2 < to) this.line(bytes, from + 1 + restart, to);
  }
}

const LF = 0x0a;
const CR = 0x0d;
