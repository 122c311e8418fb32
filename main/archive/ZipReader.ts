import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import { StoreError } from "../store/StoreError.ts";

/** A member as the archive's directory has it. */
export type ZipEntry = {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
  /** Where its local header stands. */
  readonly at: number;
};

/** Above this nothing we write comes near; a directory is read whole. */
const MAX_DIRECTORY = 256 * 1024 * 1024;
const MAX_32 = 0xffff_ffff;
/** No file is open. */
const NONE = -1;

/**
 * The directory of a zip archive. Nothing is ever unpacked to disk; names that would lead out of a folder are refused
 * all the same, since whoever made them meant no good.
 * @see PKWARE APPNOTE.TXT 6.3, sections 4.3.12 to 4.3.16
 * @throws StoreError  `damaged`
 */
export class ZipReader {
  readonly path: string;
  readonly entries: ReadonlyMap<string, ZipEntry>;
  readonly #fd: number;
  readonly #bytes: Buffer | undefined;

  /** @param bytes  the archive itself, where it came by another way than the disk; `path` is then its name alone */
  constructor(path: string, bytes?: Buffer) {
    this.path = path;
    this.#bytes = bytes;
    this.#fd = bytes === undefined ? openSync(path, "r") : NONE;
    try {
      this.entries = this.#directory();
    } catch (cause) {
      this.close();
      throw cause;
    }
  }

  /** Bytes of the archive; fewer than asked for only at its end. */
  read(at: number, length: number): Buffer {
    if (this.#bytes !== undefined) return this.#bytes.subarray(at, at + length);
    const bytes = Buffer.alloc(length);
    let filled = 0;
    while (filled < length) {
      const read = readSync(this.#fd, bytes, filled, length - filled, at + filled);
      if (read === 0) break;
      filled += read;
    }
    return bytes.subarray(0, filled);
  }

  /** Where a member's packed bytes begin. */
  dataAt({ at, name }: ZipEntry): number {
    const head = this.read(at, 30);
    if (head.length < 30 || head.readUInt32LE(0) !== 0x04034b50)
      throw this.broken(`its part ${name} is not where it should be`);
    return at + 30 + head.readUInt16LE(26) + head.readUInt16LE(28);
  }

  broken(what: string): StoreError {
    return new StoreError("damaged", `${this.path} cannot be taken over: ${what}. Nothing was taken over.`);
  }

  close(): void {
    if (this.#fd !== NONE) closeSync(this.#fd);
  }

  #size(): number {
    return this.#bytes?.length ?? fstatSync(this.#fd).size;
  }

  #directory(): Map<string, ZipEntry> {
    const { at, size, count } = this.#end();
    if (size > MAX_DIRECTORY || at + size > this.#size()) throw this.broken("it is no whole zip archive");
    const bytes = this.read(at, size);
    const entries = new Map<string, ZipEntry>();
    let from = 0;
    for (let i = 0; i < count; i += 1) {
      if (from + 46 > bytes.length || bytes.readUInt32LE(from) !== 0x02014b50)
        throw this.broken("its directory is damaged");
      const [nameLength, extraLength, commentLength] = [28, 30, 32].map((k) => bytes.readUInt16LE(from + k)) as [
        number,
        number,
        number,
      ];
      const name = bytes.toString("utf8", from + 46, from + 46 + nameLength);
      if (leadsOut(name))
        throw this.broken(`it holds a file whose name leads out of its folder (${JSON.stringify(name.slice(0, 80))})`);
      if (entries.has(name)) throw this.broken(`it holds ${JSON.stringify(name.slice(0, 80))} twice`);
      const extra = bytes.subarray(from + 46 + nameLength, from + 46 + nameLength + extraLength);
      const [size, packedSize, at] = widened(
        [bytes.readUInt32LE(from + 24), bytes.readUInt32LE(from + 20), bytes.readUInt32LE(from + 42)],
        extra,
      );
      entries.set(name, {
        name,
        method: bytes.readUInt16LE(from + 10),
        crc: bytes.readUInt32LE(from + 16),
        size,
        packedSize,
        at,
      });
      from += 46 + nameLength + extraLength + commentLength;
    }
    return entries;
  }

  #end(): { at: number; size: number; count: number } {
    const size = this.#size();
    const tailAt = Math.max(0, size - 22 - 0xffff);
    const tail = this.read(tailAt, size - tailAt);
    const endAt = tail.lastIndexOf(Buffer.from([0x50, 0x4b, 0x05, 0x06]));
    if (endAt < 0 || endAt + 22 > tail.length) throw this.broken("it is no zip archive, or was cut short");
    const narrow = {
      count: tail.readUInt16LE(endAt + 10),
      size: tail.readUInt32LE(endAt + 12),
      at: tail.readUInt32LE(endAt + 16),
    };
    const locator = endAt >= 20 ? tail.subarray(endAt - 20, endAt) : Buffer.alloc(20);
    if (locator.readUInt32LE(0) !== 0x07064b50) return narrow;
    const end64 = this.read(Number(locator.readBigUInt64LE(8)), 56);
    if (end64.length < 56 || end64.readUInt32LE(0) !== 0x06064b50) throw this.broken("its directory is damaged");
    const [count, length, at] = [32, 40, 48].map((k) => Number(end64.readBigUInt64LE(k))) as [number, number, number];
    return { count, size: length, at };
  }
}

/** 32-bit fields that are full stand in the 64-bit extra field, in this order. */
function widened(values: readonly [number, number, number], extra: Buffer): [number, number, number] {
  let from = 0;
  while (from + 4 <= extra.length && extra.readUInt16LE(from) !== 0x0001) from += 4 + extra.readUInt16LE(from + 2);
  let at = from + 4;
  return values.map((value) => {
    if (value !== MAX_32 || at + 8 > extra.length) return value;
    at += 8;
    return Number(extra.readBigUInt64LE(at - 8));
  }) as [number, number, number]; // three in, three out
}

function leadsOut(name: string): boolean {
  return name === "" || /^[/\\]|^[a-z]:|\\|\0/i.test(name) || name.split("/").includes("..");
}
