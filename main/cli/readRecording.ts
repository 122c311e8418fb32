import { createReadStream } from "node:fs";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import { SpoolParser } from "../link/SpoolParser.ts";
import { isSpool } from "../link/spoolReader.ts";
import { type CommandIo, UsageError } from "./Command.ts";

/** What a recording brings, in order: bytes of the gauge, the note that some are missing here, how to read what follows. */
export type RecordingPart =
  | { readonly kind: "bytes"; readonly bytes: Uint8Array }
  | { readonly kind: "gap"; readonly why: string }
  /** The user asked for a zero here. */
  | { readonly kind: "zero" }
  | {
      readonly kind: "settings";
      readonly pattern: LinePattern | undefined;
      readonly rateHz: number | undefined;
      readonly capacityN: number | undefined;
    };

/** Long enough to tell a spool from text. */
const headLength = 32;

/**
 * Reads a file or standard input block by block, so that its length costs no memory. A text stream gives bytes alone;
 * a spool of this program is known by its first bytes and taken apart.
 * @throws UsageError  the file cannot be read
 */
export async function* readRecording(file: string | undefined, io: CommandIo): AsyncIterable<RecordingPart> {
  const source = file === undefined || file === "-" ? io.stdin : createReadStream(file, { highWaterMark: 1 << 16 });
  let head: Uint8Array | undefined = new Uint8Array(0);
  let parser: SpoolParser | undefined;
  try {
    for await (const chunk of source) {
      let bytes: Uint8Array = typeof chunk === "string" ? Buffer.from(chunk) : (chunk as Uint8Array); // streams are untyped
      if (head !== undefined) {
        bytes = Buffer.concat([head, bytes]);
        head = bytes.length < headLength ? bytes : undefined;
        if (head !== undefined) continue;
        if (isSpool(bytes)) parser = new SpoolParser();
      }
      if (parser === undefined) yield { kind: "bytes", bytes };
      else yield* partsOf(parser, bytes);
    }
  } catch (cause) {
    const code = (cause as NodeJS.ErrnoException).code;
    if (code === undefined) throw cause;
    throw new UsageError(`${file}: cannot be read (${code}); check the name`);
  }
  if (head !== undefined && head.length > 0) yield { kind: "bytes", bytes: head };
}

function partsOf(parser: SpoolParser, bytes: Uint8Array): RecordingPart[] {
  const parts: RecordingPart[] = [];
  parser.push(bytes, (record) => {
    // Bytes are lent by the parser.
    if (record.kind === "bytes") parts.push({ kind: "bytes", bytes: record.bytes.slice() });
    else if (record.kind === "gap") parts.push({ kind: "gap", why: record.why });
    else if (record.kind === "skipped") parts.push({ kind: "gap", why: "skipped" });
    else if (record.kind === "zero") parts.push({ kind: "zero" });
    else if (record.kind === "pattern") {
      const { pattern, rateHz, capacityN } = record;
      parts.push({ kind: "settings", pattern, rateHz, capacityN });
    } else if (record.kind === "header") {
      const { pattern, rateHz, capacityN } = record.settings;
      parts.push({ kind: "settings", pattern, rateHz, capacityN });
    }
  });
  return parts;
}
