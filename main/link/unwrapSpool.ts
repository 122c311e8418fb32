import { SpoolParser } from "./SpoolParser.ts";
import { SPOOL_MAGIC } from "./spoolCodec.ts";
import { isSpool } from "./spoolReader.ts";

/** What a recording brings: bytes of the gauge, or the note that some are missing here. */
export type Recorded = { readonly bytes: Uint8Array } | { readonly gap: string };

/** Passes text on as it is and takes a spool apart; which of the two it is, its first bytes tell. */
export async function* unwrapSpool(blocks: AsyncIterable<Uint8Array>): AsyncIterable<Recorded> {
  let begin: Uint8Array | undefined = new Uint8Array(0);
  let parser: SpoolParser | undefined;
  for await (const block of blocks) {
    let bytes = block;
    if (begin !== undefined) {
      bytes = Buffer.concat([begin, block]);
      const unsure = bytes.length < SPOOL_MAGIC.length && SPOOL_MAGIC.subarray(0, bytes.length).equals(bytes);
      begin = unsure ? bytes : undefined;
      if (unsure) continue;
      if (isSpool(bytes)) parser = new SpoolParser();
    }
    if (parser === undefined) yield { bytes };
    else yield* recordsOf(parser, bytes);
  }
  if (begin !== undefined && begin.length > 0) yield { bytes: begin };
}

function recordsOf(parser: SpoolParser, bytes: Uint8Array): readonly Recorded[] {
  const found: Recorded[] = [];
  parser.push(bytes, (record) => {
    if (record.kind === "bytes" && record.bytes.length > 0) found.push({ bytes: record.bytes.slice() }); // lent by the parser
    if (record.kind === "gap") found.push({ gap: record.why });
    if (record.kind === "skipped") found.push({ gap: "skipped" });
  });
  return found;
}
