import { closeSync, openSync, rmSync, statSync, writeSync } from "node:fs";
import { constants, crc32, deflateRaw } from "node:zlib";

/** What the archive's directory says of a member. */
export type MemberFacts = {
  readonly name: string;
  readonly crc: number;
  /** Bytes as they were, and as they lie in the archive. */
  readonly size: number;
  readonly packedSize: number;
};

/** So much text is deflated at a time, beside this thread; also what a member holds in memory. */
const PIECE = 1 << 20;

/** Room to begin with: most members stay small. */
const FIRST = 1 << 14;

/** So many pieces of a member may be on their way before the writer is held back. */
const AT_ONCE = 3;

/**
 * One file of an archive in the making, deflated into a file of its own beside it, so that many can grow at once.
 * Each piece ends on a byte border (a sync flush), so pieces deflated by themselves make one stream when put together.
 * @see RFC 1951; the flush is what zlib calls Z_SYNC_FLUSH
 */
export class ZipMember {
  readonly name: string;
  readonly path: string;
  readonly #fd: number;
  #bytes = Buffer.allocUnsafeSlow(FIRST);
  #length = 0;
  #crc = 0;
  #size = 0;
  /** Pieces on their way into the file, oldest first. */
  readonly #onTheirWay: Promise<void>[] = [];
  #open = true;

  readonly #level: number;

  /** @param level  how hard to deflate, from 1 to 9 */
  constructor(name: string, path: string, level: number) {
    this.#level = level;
    this.name = name;
    this.path = path;
    this.#fd = openSync(path, "w", 0o600);
  }

  /** Takes text; when much has gathered, a piece goes off to be deflated. */
  write(text: string): void {
    if (this.#length + 3 * text.length > this.#bytes.length) this.#makeRoom(Buffer.byteLength(text));
    this.#length += this.#bytes.write(text, this.#length);
    if (this.#length >= PIECE) this.#send();
  }

  #makeRoom(more: number): void {
    if (this.#length + more <= this.#bytes.length) return;
    const grown = Buffer.allocUnsafeSlow(Math.max(2 * this.#bytes.length, this.#length + more));
    this.#bytes.copy(grown, 0, 0, this.#length);
    this.#bytes = grown;
  }

  /** To be awaited now and then: holds the writer back while the deflating is behind. */
  async room(): Promise<void> {
    if (this.#onTheirWay.length >= AT_ONCE) await this.#onTheirWay[0];
  }

  async end(): Promise<MemberFacts> {
    this.#send();
    await this.#onTheirWay.at(-1);
    writeSync(this.#fd, LAST_BLOCK);
    this.#close();
    return { name: this.name, crc: this.#crc, size: this.#size, packedSize: statSync(this.path).size };
  }

  /** Takes the file away, once nothing is on its way into it any more. */
  async discard(): Promise<void> {
    await this.#onTheirWay.at(-1)?.catch(() => {});
    this.#close();
    rmSync(this.path, { force: true });
  }

  /** What failed stays in the list, so that whoever waits next is told of it. */
  async #writeAfter(before: Promise<void> | undefined, packed: Promise<Buffer>): Promise<void> {
    await before;
    writeSync(this.#fd, await packed);
    this.#onTheirWay.shift();
  }

  #close(): void {
    if (this.#open) closeSync(this.#fd);
    this.#open = false;
  }

  #send(): void {
    if (this.#length === 0) return;
    const bytes = this.#bytes.subarray(0, this.#length);
    this.#bytes = Buffer.allocUnsafeSlow(this.#bytes.length);
    this.#length = 0;
    this.#crc = crc32(bytes, this.#crc);
    this.#size += bytes.length;
    const packed = deflated(bytes, this.#level);
    const written = this.#writeAfter(this.#onTheirWay.at(-1), packed);
    this.#onTheirWay.push(written);
    written.catch(() => {}); // told by `room` and `end`
    packed.catch(() => {});
  }
}

/** An empty block marked as the last one. */
const LAST_BLOCK = Buffer.from([0x03, 0x00]);

/** Room for what a piece shrinks to, so that it comes back in one go or two. */
const PACKED = 1 << 16;

function deflated(bytes: Buffer, level: number): Promise<Buffer> {
  return new Promise((done, fail) =>
    deflateRaw(bytes, { level, finishFlush: constants.Z_SYNC_FLUSH, chunkSize: PACKED }, (cause, packed) =>
      cause === null ? done(packed) : fail(cause),
    ),
  );
}
