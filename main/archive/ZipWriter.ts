import { closeSync, fsyncSync, openSync, readSync, rmSync, writeSync } from "node:fs";
import { ZipMember } from "./ZipMember.ts";
import { directoryEnd, directoryEntry, dosTimeOf, localHeader, type PlacedMember } from "./zipRecords.ts";

const CHUNK = 1 << 20;

/**
 * Writes an archive whose members grow side by side: each into a file beside the archive, all put together at the
 * end. Memory stays flat whatever the size.
 */
export class ZipWriter {
  readonly path: string;
  readonly #dosTime: number;
  readonly #members: ZipMember[] = [];

  /** @param path  where to; a file that is there is written over */
  constructor(path: string, nowMs: number) {
    this.path = path;
    this.#dosTime = dosTimeOf(nowMs);
  }

  /** A further member; members stand in the archive in the order in which they were asked for. */
  member(name: string, level = 3): ZipMember {
    const member = new ZipMember(name, `${this.path}.${this.#members.length}`, level);
    this.#members.push(member);
    return member;
  }

  /** Puts the archive together and answers how many bytes it has; `goOn` is called often and may throw. */
  async finish(goOn: () => void): Promise<number> {
    const fd = openSync(this.path, "w", 0o600);
    try {
      let at = 0;
      const placed: PlacedMember[] = [];
      for (const member of this.#members) {
        const facts = await member.end();
        placed.push({ ...facts, at });
        at += writeSync(fd, localHeader(facts, this.#dosTime));
        at += copyInto(fd, member.path, goOn);
        rmSync(member.path);
      }
      const directory = Buffer.concat(placed.map((member) => directoryEntry(member, this.#dosTime)));
      const end = directoryEnd(placed.length, directory.length, at);
      writeSync(fd, directory);
      writeSync(fd, end);
      fsyncSync(fd);
      return at + directory.length + end.length;
    } finally {
      closeSync(fd);
    }
  }

  /** Takes away whatever was written. */
  async discard(): Promise<void> {
    for (const member of this.#members) await member.discard();
    rmSync(this.path, { force: true });
  }
}

function copyInto(fd: number, path: string, goOn: () => void): number {
  const from = openSync(path, "r");
  const chunk = Buffer.allocUnsafe(CHUNK);
  let copied = 0;
  try {
    for (;;) {
      goOn();
      const read = readSync(from, chunk);
      if (read === 0) return copied;
      writeSync(fd, chunk, 0, read);
      copied += read;
    }
  } finally {
    closeSync(from);
  }
}
