import type { Readable } from "node:stream";
import type { ByteSource } from "./ByteSource.ts";
import { LinkError } from "./LinkProblem.ts";
import { unwrapSpool } from "./unwrapSpool.ts";

/** Bytes from standard input or any other readable stream, as they come; a spool is unwrapped. */
export function stdinSource(input: Readable, label = "standard input"): ByteSource {
  let closed = false;
  return {
    label,
    async open(sink) {
      if (closed) throw new LinkError("aborted", `opening ${label} was called off`);
      const read = async () => {
        for await (const item of unwrapSpool(input)) {
          if (closed) return;
          if ("gap" in item) sink.onGap?.(item.gap);
          else sink.onBytes(item.bytes);
        }
        if (!closed) sink.onClosed(undefined);
      };
      read().catch((cause: Error) => {
        if (!closed) sink.onClosed({ code: "linkFault", message: `${label} could not be read on: ${cause.message}` });
      });
    },
    async write() {
      throw new LinkError("linkFault", `${label} cannot be asked; this gauge sends on request only`);
    },
    async close() {
      closed = true;
      input.destroy();
    },
  };
}
