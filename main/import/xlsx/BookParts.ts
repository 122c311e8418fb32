import { textOf } from "../../archive/linesOf.ts";
import { ZipReader } from "../../archive/ZipReader.ts";
import { StoreError } from "../../store/StoreError.ts";
import { TableError } from "../TableError.ts";

/** All parts that are read may unpack to so much together: some two million cells. */
const MOST_BYTES = 256 * 1024 * 1024;

/**
 * The parts of a workbook (ECMA-376-2), unpacked one by one as they are asked for and bounded: what would swell, does not
 * match its checksum or declares entities of its own is refused before any reader of XML sees it.
 * @throws TableError
 */
export class BookParts {
  readonly #zip: ZipReader;
  #left: number;

  constructor(bytes: Buffer, mostBytes = MOST_BYTES) {
    this.#left = mostBytes;
    this.#zip = inWordsOfTables(() => new ZipReader("workbook", bytes));
  }

  has(path: string): boolean {
    return this.#zip.entries.has(path);
  }

  /** A part's text. */
  text(path: string): string {
    const entry = this.#zip.entries.get(path);
    if (entry === undefined) throw new TableError(`is no workbook this program can read: it holds no ${path}`);
    if (entry.size > this.#left) throw new TableError("is too large unpacked; save the sheet alone, or as CSV");
    this.#left -= entry.size;
    const text = inWordsOfTables(() => textOf(this.#zip, entry, MOST_BYTES));
    if (text.charCodeAt(1) === 0 || text.startsWith("\ufffd"))
      throw new TableError(`holds a part in an encoding other than UTF-8 (${path})`);
    if (/<!(?:DOCTYPE|ENTITY)/i.test(text))
      throw new TableError(`holds a part with a document type (${path}), which no workbook needs`);
    return text;
  }
}

function inWordsOfTables<T>(work: () => T): T {
  try {
    return work();
  } catch (cause) {
    if (!(cause instanceof StoreError)) throw cause;
    const why = /cannot be taken over: (.*)\. Nothing/s.exec(cause.message)?.[1] ?? cause.message;
    throw new TableError(`is no workbook that can be read: ${why}`);
  }
}
