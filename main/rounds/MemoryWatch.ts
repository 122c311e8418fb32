import type { DumpFormat } from "../../app/round/dump/DumpFormat.ts";
import { hasGaps } from "../../app/round/dump/hasGaps.ts";
import { learnDump } from "../../app/round/dump/learnDump.ts";
import { readDump } from "../../app/round/dump/readDump.ts";

/** What has come so far of a memory over the port. */
export type MemorySoFar = {
  readonly records: number;
  /** As many records as the gauge announced, none damaged or left out; false also where it announced none. */
  readonly whole: boolean;
  /** Records were lost. */
  readonly incomplete: boolean;
};

/** So many characters from its beginning and from its end tell how a memory is written. */
const SAMPLE = 6_000;

/**
 * Looks while a memory comes whether all of it is there. The thread that listens to the gauge does it: so how the lines are
 * built is learned from a sample only, and each look reads just the lines that are new. What is filed is read from the whole
 * text afterwards, in a thread of its own.
 */
export class MemoryWatch {
  #text = "";
  #format: DumpFormat | undefined;
  #seen = 0;
  #numbers: (string | undefined)[] = [];
  #announced: number | undefined;
  #damaged = false;

  push(part: string): void {
    this.#text += part;
  }

  get text(): string {
    return this.#text;
  }

  /** @param over  nothing more comes: a last line without its end is looked at as well */
  look(over = false): MemorySoFar {
    this.#learn();
    if (this.#format !== undefined) this.#read(this.#format, over ? this.#text.length : this.#wholeLines());
    const records = this.#numbers.length;
    const lost = this.#damaged || hasGaps(this.#numbers);
    const short = this.#announced !== undefined && this.#announced !== records;
    return { records, whole: this.#announced !== undefined && !short && !lost, incomplete: lost || short };
  }

  #learn(): void {
    const text = this.#text;
    const sample =
      text.length <= 2 * SAMPLE ? text : `${lines(text.slice(0, SAMPLE))}\n${fromLine(text.slice(-SAMPLE))}`;
    const { format } = learnDump(sample);
    if (format === undefined || (isDated(this.#format) && !isDated(format))) return; // live lines after the last record
    const before = this.#format;
    this.#format = {
      ...format,
      countAfter: [...new Set([...(before?.countAfter ?? []), ...(format.countAfter ?? [])])],
    };
    if (before !== undefined && sameLines(before, format)) return;
    // What was read by another form does not count.
    this.#seen = 0;
    this.#numbers = [];
    this.#announced = undefined;
    this.#damaged = false;
  }

  #read(format: DumpFormat, end: number): void {
    if (end <= this.#seen) return;
    const { records, rejected, announced } = readDump(this.#text.slice(this.#seen, end), format);
    this.#seen = end;
    for (const { number } of records) this.#numbers.push(number);
    if (announced !== undefined) this.#announced = Math.max(this.#announced ?? 0, announced);
    if (rejected.length > 0) this.#damaged = true;
  }

  /** Up to where the text has whole lines; whole blocks where a record stands on several. */
  #wholeLines(): number {
    if (this.#format?.separator !== "lines") return this.#text.lastIndexOf("\n") + 1;
    const ends = /\r?\n[ \t]*\r?\n/g;
    let end = this.#seen;
    ends.lastIndex = this.#seen;
    while (ends.exec(this.#text) !== null) end = ends.lastIndex;
    return end;
  }
}

const lines = (text: string) => text.slice(0, text.lastIndexOf("\n") + 1);
const fromLine = (text: string) => text.slice(text.indexOf("\n") + 1);
/** A memory keeps a date or a time with each reading; live lines do not. */
const isDated = (format: DumpFormat | undefined) =>
  format?.fields.some(({ field }) => field === "date" || field === "time" || field === "stamp") === true;
const sameLines = (a: DumpFormat, b: DumpFormat) =>
  a.separator === b.separator &&
  a.checksum?.method === b.checksum?.method &&
  a.fields.map(({ field }) => field).join() === b.fields.map(({ field }) => field).join();
