import { open, rename, rm } from "node:fs/promises";
import type { SpoolRecord } from "./SpoolRecord.ts";
import { SpoolReplay } from "./SpoolReplay.ts";
import { encodeRecord, SPOOL_MAGIC } from "./spoolCodec.ts";
import { readSpoolFile } from "./spoolReader.ts";

/** What stands in one part of a spool. */
export type SpoolSurvey = {
  /** Stretches of the stream that hold a cycle, in places, with a margin of rest on both sides. */
  readonly busy: readonly { readonly from: number; readonly to: number }[];
  /** Cycles stand in it that have not been noted as filed or cleared, or bytes no pattern has read yet. */
  readonly unfiled: boolean;
};

/** Finds the clampings in a part, with the same reading as everywhere. */
export async function surveySpool(path: string): Promise<SpoolSurvey> {
  const busy: { from: number; to: number }[] = [];
  const replay = new SpoolReplay({
    cycle: ({ startIndex, endIndex }) => busy.push({ from: startIndex - MARGIN, to: endIndex + MARGIN }),
  });
  await readSpoolFile(path, (record) => replay.take(record));
  replay.end();
  const settled = replay.lastMark !== undefined && replay.lastMark.what !== "began" ? replay.lastMark.cycles : 0;
  const unread = replay.feed !== undefined && replay.feed.stream === undefined && replay.feed.bytes > 0;
  return { busy, unfiled: unread || busy.length > settled };
}

/**
 * Writes the part anew without its quiet stretches; each leaves a note of what stood there. The old file stays until the
 * new one is whole on disk. Answers the bytes that are left.
 */
export async function compactSpool(path: string, survey: SpoolSurvey): Promise<number> {
  const temporary = `${path}.new`;
  await rm(temporary, { force: true });
  const file = await open(temporary, "wx", 0o600);
  const out = new QuietSkipper(survey.busy);
  let left = 0;
  try {
    await file.write(SPOOL_MAGIC);
    left += SPOOL_MAGIC.length;
    const write = async () => {
      for (const piece of out.pieces.splice(0)) left += (await file.write(piece)).bytesWritten;
    };
    await readSpoolFile(path, (record) => out.take(record), write);
    out.flush();
    await write();
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(temporary, path);
  return left;
}

/** Keeps what lies near a cycle and every note; puts a record of its length in the place of a quiet stretch. */
class QuietSkipper {
  readonly pieces: Buffer[] = [];
  readonly #busy: SpoolSurvey["busy"];
  readonly #replay = new SpoolReplay({ cycle: () => {} });
  #next = 0; // the first stretch that is not over yet
  #quiet: { fromMs: number; toMs: number; bytes: number; places: number } | undefined;

  constructor(busy: SpoolSurvey["busy"]) {
    this.#busy = busy;
  }

  take(record: SpoolRecord): void {
    const from = this.#replay.places;
    this.#replay.take(record);
    const to = this.#replay.places;
    const unread = this.#replay.feed?.stream === undefined;
    if (record.kind !== "bytes" || unread || this.#isBusy(from, to)) {
      this.flush();
      this.pieces.push(encodeRecord(record));
      return;
    }
    this.#quiet ??= { fromMs: record.atMs, toMs: record.atMs, bytes: 0, places: 0 };
    this.#quiet.toMs = record.atMs;
    this.#quiet.bytes += record.bytes.length;
    this.#quiet.places += to - from;
  }

  /** Places only rise, and so do the stretches. */
  #isBusy(from: number, to: number): boolean {
    while (this.#next < this.#busy.length && this.#busy[this.#next]!.to < from) this.#next += 1;
    const stretch = this.#busy[this.#next];
    return stretch !== undefined && to >= stretch.from;
  }

  flush(): void {
    if (this.#quiet === undefined) return;
    const { fromMs, toMs, bytes, places } = this.#quiet;
    this.#quiet = undefined;
    this.pieces.push(encodeRecord({ kind: "skipped", atMs: fromMs, bytes, places, lastedMs: toMs - fromMs }));
  }
}

/** Places of rest kept on both sides of a cycle, enough for its zero. */
const MARGIN = 1_000;
