import { createReadStream } from "node:fs";
import { basename } from "node:path";
import type { ByteSink, ByteSource } from "./ByteSource.ts";
import { type Clock, systemClock } from "./Clock.ts";
import { LinkError } from "./LinkProblem.ts";
import { freely, type Pace, paced } from "./pace.ts";
import { type Recorded, unwrapSpool } from "./unwrapSpool.ts";

export type FileOptions = {
  readonly path: string;
  /** Lines a second; absent: as fast as they are taken. */
  readonly rateHz?: number | undefined;
  readonly clock?: Clock | undefined;
};

/** Bytes from a recorded stream, text or spool (a spool's gaps are passed on), at its own pace or at full speed. */
export function fileSource(options: FileOptions): ByteSource {
  let closed = false;
  let opened = false;
  const gate = new Gate();
  return {
    label: basename(options.path),
    async open(sink) {
      if (opened) throw new Error("a byte source is opened once");
      opened = true;
      const items = unwrapSpool(createReadStream(options.path, { highWaterMark: 1 << 14 }))[Symbol.asyncIterator]();
      const first = await items.next().catch((cause) => {
        throw unreadable(options.path, cause);
      });
      if (closed) throw new LinkError("aborted", `opening ${options.path} was called off`);
      const pace = options.rateHz === undefined ? freely() : paced(options.rateHz, options.clock ?? systemClock);
      play(items, first, pace, sink, gate, () => closed).catch((cause) => {
        if (!closed) sink.onClosed(unreadable(options.path, cause).problem);
      });
    },
    async write() {
      throw new LinkError("linkFault", "a recording cannot be asked; this gauge sends on request only");
    },
    hold: (on) => gate.set(on),
    async close() {
      closed = true;
      gate.set(false);
    },
  };
}

async function play(
  items: AsyncIterator<Recorded>,
  first: IteratorResult<Recorded>,
  pace: Pace,
  sink: ByteSink,
  gate: Gate,
  isClosed: () => boolean,
): Promise<void> {
  for (let item = first; item.done !== true && !isClosed(); item = await items.next()) {
    if ("gap" in item.value) sink.onGap?.(item.value.gap);
    else {
      await gate.open;
      await pace(item.value.bytes, (slice) => !isClosed() && sink.onBytes(slice));
    }
  }
  await items.return?.(); // lets go of the file when it was closed early
  if (!isClosed()) sink.onClosed(undefined);
}

/** Shut, it keeps whoever awaits `open` waiting. */
class Gate {
  open: Promise<void> = Promise.resolve();
  #release = () => {};

  set(shut: boolean): void {
    this.#release();
    this.#release = () => {};
    if (!shut) return;
    this.open = new Promise((resolve) => {
      this.#release = resolve;
    });
  }
}

function unreadable(path: string, cause: NodeJS.ErrnoException): LinkError {
  const why = cause.code === "ENOENT" ? "there is no such file" : `it cannot be read (${cause.code ?? cause.message})`;
  return new LinkError("fileUnreadable", `${path}: ${why}; check the name`, cause);
}
